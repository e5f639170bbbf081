import { readFile } from "node:fs/promises";
import { basename, join } from "node:path";
import type { Construction } from "#lib/constructions/construction";
import { versionFile, versionsOf } from "#lib/constructions/versions";
import { failed, ok, type Result } from "#lib/result";
import type { Staging } from "#lib/staging/staging";
import { writeStaging } from "#lib/staging/writeStaging";
import { ownConstructions } from "./readFolder";

/**
 * What keeping a new version writes into a folder: the piece list first, since it means the same without the version; then older versions
 * that so far came from the library; the version itself last. No construction that is there is written over.
 */
export const versionFiles = async (
  folder: string,
  moved: Staging,
  version: Construction,
): Promise<Result<ReadonlyMap<string, string>, string>> => {
  const written = writeStaging(moved);
  const own = await ownConstructions(folder);
  const files = new Map([["pieces.csv", written.get("pieces.csv")!]]);
  const kept = await Promise.all(own.map((name) => readFile(join(folder, "constructions", name), "utf8")));
  const there = new Set(kept.map((text) => nameOf(JSON.parse(text.replace(/^\uFEFF/, "")))));
  for (const one of versionsOf(moved.constructions, version.code)) {
    if (there.has(nameOf(one))) continue;
    const name = versionFile(moved.constructions, one);
    if (own.includes(basename(name))) return failed(`${name} is another construction: give that file another name.`);
    files.set(name, written.get(name)!);
  }
  return ok(files);
};

const nameOf = ({ code, version }: Pick<Construction, "code" | "version">) => `${code}@${version}`;
