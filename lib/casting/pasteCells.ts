import type { CastCell, Recast } from "./castCell";
import type { Performer } from "./casting";
import type { GridColumn, GridRow } from "./castingGrid";
import { performerMeant } from "./findPerformer";

/** Cells of a block as a spreadsheet copies it: rows by line, cells by tab. */
export const pastedBlock = (text: string): readonly (readonly string[])[] => {
  const lines = text.replace(/\r\n?/g, "\n").replace(/\n$/, "").split("\n");
  return lines.map((line) => line.split("\t").map((cell) => cell.trim().replace(/^"(.*)"$/s, "$1")));
};

interface PastedCells {
  readonly changes: readonly Recast[];
  /** What could not be placed, as sentences: nothing is changed for it. */
  readonly problems: readonly string[];
}

/**
 * A block laid on the grid from one cell on, rightwards and downwards; what hangs over the edge is told. On a folded row the lines of a
 * column fill the places of its role from the first on. An empty cell leaves a place with nobody yet; several who stand by are parted by `;`.
 */
export const pasteCells = (
  block: readonly (readonly string[])[],
  from: { readonly row: number; readonly column: number },
  rows: readonly GridRow[],
  columns: readonly GridColumn[],
  performers: readonly Pick<Performer, "code" | "name">[],
): PastedCells => {
  const changes: Recast[] = [];
  const problems: string[] = [];
  const start = rows[from.row];
  const places: readonly CastPlaceOf[] = start?.place === null ? placesOf(start) : rows.slice(from.row).flatMap(openPlace);
  for (const [down, line] of block.entries())
    for (const [across, text] of line.entries()) {
      const [place, column] = [places[down], columns[from.column + across]];
      if (!place || !column) {
        if (text !== "") problems.push(`"${text}" lies outside the grid.`);
        continue;
      }
      const read = readNames(text, column.standing, performers);
      problems.push(...read.problems);
      if (read.problems.length === 0) changes.push({ ...place, ...column, performers: read.codes });
    }
  return { changes, problems };
};

type CastPlaceOf = Pick<CastCell, "role" | "place">;

const placesOf = ({ role, places }: GridRow): readonly CastPlaceOf[] =>
  Array.from({ length: places }, (_, at) => ({ role, place: at + 1 }));

/** A folded row further down takes no line: which of its places would be meant? */
const openPlace = ({ role, place }: GridRow): readonly CastPlaceOf[] => (place === null ? [] : [{ role, place }]);

/** Codes of those a cell names. */
export const readNames = (
  text: string,
  standing: CastCell["standing"],
  performers: readonly Pick<Performer, "code" | "name">[],
): { readonly codes: readonly string[]; readonly problems: readonly string[] } => {
  const names = text
    .split(";")
    .map((name) => name.trim())
    .filter((name) => name !== "");
  const read = names.map((name) => performerMeant(name, performers));
  const problems = read.flatMap((one) => (one.ok ? [] : [one.error]));
  if (standing === "cast" && names.length > 1) problems.push(`"${text}" names more than one: one dances a place.`);
  return { codes: read.flatMap((one) => (one.ok ? [one.value.code] : [])), problems };
};
