import { readFile } from "node:fs/promises";
import type { Construction } from "#lib/constructions/construction";
import { readConstruction } from "#lib/constructions/readConstruction";
import { versionMeant, versionsOf } from "#lib/constructions/versions";
import { readText } from "#lib/exchange/readText";
import { failed, ok, type Result } from "#lib/result";
import { hourCells, versionSheets } from "#lib/sheets/versionSheets";
import { readStaging } from "#lib/staging/readStaging";
import type { Staging } from "#lib/staging/staging";
import { writeStaging } from "#lib/staging/writeStaging";
import { moveToVersion, withVersion } from "#lib/whatif/moveToVersion";
import { piecesNamed } from "#lib/whatif/piecesNamed";
import { versionEffect } from "#lib/whatif/versionEffect";
import { faultLines } from "./faultLines";
import type { Output } from "./output";
import { readFolder } from "./readFolder";
import { sheetLines } from "./sheetLines";
import { versionFiles } from "./versionFiles";
import type { VersionsCommand } from "./whatIfCommands";
import { writeFolder } from "./writeFolder";

/** Tells what a new version of a construction would change, and with --write keeps it and moves the pieces; the exit code. */
export const versions = async (command: VersionsCommand, output: Output): Promise<number> => {
  const read = await readFolder(command.folder);
  const text = readText(command.file, await readFile(command.file));
  const version = text.ok ? readConstruction(text.value, command.file) : failed([text.error]);
  if (!read.ok || !version.ok) {
    output.words(faultLines([...(read.ok ? [] : read.error), ...(version.ok ? [] : version.error)]));
    return 2;
  }
  const staging = read.value;
  const moving = movedTo(staging, version.value, command);
  if (!moving.ok) {
    output.words(moving.error);
    return 2;
  }
  const { moved, pieces } = moving.value;
  const judged = readStaging(writeStaging(moved));
  if (!judged.ok) {
    output.words(faultLines(judged.error));
    return 2;
  }
  const effects = versionsOf(staging.constructions, command.construction).map((from) => ({
    from: from.version,
    to: version.value.version,
    ...versionEffect(staging, from, version.value, pieces),
  }));
  const told = effects.filter(({ garments, unchanged }) => garments.length + unchanged > 0);
  if (command.write) {
    const files = await versionFiles(command.folder, moved, version.value);
    if (!files.ok) {
      output.words(files.error);
      return 2;
    }
    await writeFolder(command.folder, files.value);
    output.words(`Written to ${command.folder}: ${[...files.value.keys()].join(", ")}.`);
  }
  output.data(command.json ? `${JSON.stringify(told, null, 2)}\n` : told.map((effect) => effectText(effect, staging)).join("\n"));
  if (told.length === 0) output.words(`No garment is made as ${command.construction}.`);
  return 0;
};

/** The staging with the new version kept and the pieces asked for moved to it. */
const movedTo = (
  staging: Staging,
  version: Construction,
  { construction, pieces: names }: VersionsCommand,
): Result<{ readonly moved: Staging; readonly pieces: "all" | readonly string[] }, string> => {
  if (version.code !== construction) return failed(`The file is of "${version.code}", not of "${construction}".`);
  if (!versionMeant(staging.constructions, construction, null)) return failed(`There is no construction "${construction}".`);
  const pieces = names === null ? ok("all" as const) : piecesNamed(staging, names);
  if (!pieces.ok) return pieces;
  const kept = withVersion(staging, version);
  if (!kept.ok) return kept;
  const moved = moveToVersion(kept.value, construction, version.version, pieces.value);
  return moved.ok ? ok({ moved: moved.value, pieces: pieces.value }) : moved;
};

const effectText = (
  effect: ReturnType<typeof versionEffect> & { readonly from: number; readonly to: number },
  staging: Staging,
): string => {
  const { from, to, garments, unchanged } = effect;
  const stay = unchanged === 0 ? "" : `; ${unchanged} would stay as ${unchanged === 1 ? "it is" : "they are"}`;
  const head = `Version ${from} to ${to}: ${garments.length} ${garments.length === 1 ? "garment" : "garments"} would change${stay}.`;
  const [before, after, low, likely, high] = hourCells(effect.before, effect.after);
  const hours = `Likely ${before}, then ${after}: low ${low}, likely ${likely}, high ${high}.`;
  return [head, hours, ...versionSheets(effect, staging).flatMap((sheet) => sheetLines(sheet)), ""].join("\n");
};
