import { z } from "zod";
import type { Recast } from "#lib/casting/castCell";
import { CastCells, type CastingBoard } from "#lib/casting/castingGrid";
import { readNames } from "#lib/casting/pasteCells";
import { failed, ok, type Result } from "#lib/result";
import { performerWords, placeWords } from "./cellWords";
import { NO_PLACE } from "./seenCells";

const MOST_CHANGES = 2000;

const place = z.coerce.number().int().min(1).max(200);
const cell = { cast: z.string().min(1).max(60), role: z.string().min(1), standing: z.enum(["cast", "cover"]) };

const recasts = z
  .array(z.object({ ...cell, place, performers: z.array(z.string()).max(50).nullable() }))
  .min(1)
  .max(MOST_CHANGES);

/** What the three ways of changing the casting send: the grid its changes, a cell whom it shall hold, a list its names. */
export const castingInput = z.union([
  z.object({ production: z.string().min(1), changes: z.string().min(2) }),
  z.object({ production: z.string().min(1), ...cell, place, performer: z.union([z.string(), z.array(z.string())]).optional() }),
  z.object({ production: z.string().min(1), ...cell, from: place, names: z.string().min(1) }),
]);

/** The changes that were sent; a sentence when they cannot be read or name nobody. */
export const readRecasts = (input: z.output<typeof castingInput>, board: CastingBoard): Result<readonly Recast[], string> => {
  if ("changes" in input) return known(parsed(input.changes), board);
  const { cast, role, standing } = input;
  if ("names" in input) {
    const lines = input.names.replace(/\r\n?/g, "\n").replace(/\n+$/, "").split("\n");
    const read = lines.map((line) => readNames(line, standing, board.performers));
    const problems = read.flatMap((one) => one.problems);
    if (problems.length > 0) return failed(problems.slice(0, 5).join(" "));
    return known(
      read.map((one, at) => ({ cast, role, standing, place: input.from + at, performers: one.codes })),
      board,
    );
  }
  const chosen = [input.performer ?? []].flat().filter((code) => code !== "");
  return known([{ cast, role, standing, place: input.place, performers: chosen.includes(NO_PLACE) ? null : chosen }], board);
};

const parsed = (text: string): readonly Recast[] => {
  try {
    return recasts.safeParse(JSON.parse(text)).data ?? [];
  } catch {
    return [];
  }
};

/** Null while the cells are as they were seen; else what they are now, so that theirs and mine can be told apart. */
export const changedSince = (seen: string, board: CastingBoard): string | null => {
  const cells = new CastCells(board);
  const other = parsed(seen).filter((cell) => JSON.stringify(cells.at(cell).performers) !== JSON.stringify(cell.performers));
  if (other.length === 0) return null;
  const said = other.slice(0, 5).map((cell) => {
    const now = cells.at(cell).performers;
    const who = now === null ? "not danced" : now.length === 0 ? "nobody yet" : performerWords(board, now);
    return `${placeWords(board, cell)}, ${cell.cast}: ${who}`;
  });
  return `Somebody has changed the casting since you looked. Theirs: ${said.join("; ")}. Yours is not kept: keep again to put yours in its place.`;
};

const known = (changes: readonly Recast[], { performers, roles }: CastingBoard): Result<readonly Recast[], string> => {
  if (changes.length === 0) return failed("There is nothing to change.");
  const codes = new Set(performers.map(({ code }) => code));
  const nobody = changes.flatMap((change) => change.performers ?? []).find((code) => !codes.has(code));
  if (nobody !== undefined) return failed(`Nobody is called "${nobody}".`);
  const over = changes.find((change) => change.place > (roles.find(({ code }) => code === change.role)?.places ?? 0));
  return over ? failed(`${over.role} has no place ${over.place}.`) : ok(changes);
};
