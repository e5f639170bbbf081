import { garmentsOf } from "#lib/casting/garments";
import type { Garment } from "#lib/casting/wardrobe";
import type { Change } from "./change";
import { compareConstructions } from "./compareConstructions";
import { fromStaging, type WrittenTable } from "./fromStaging";
import { keysInOrder } from "./keysInOrder";
import type { Staging } from "./staging";

/** What differs from one staging to the next, by file, in the order of the rows. With nothing before, everything is added. */
export const compareStagings = (before: Staging | null, after: Staging): readonly Change[] =>
  compareInOrder(before && keysInOrder(before), keysInOrder(after));

const compareInOrder = (before: Staging | null, after: Staging): readonly Change[] => {
  const older = new Map((before ? fromStaging(before) : []).map((table) => [table.file, table]));
  return [
    ...fromStaging(after).flatMap((table) => compareTables(older.get(table.file) ?? null, table)),
    ...compareConstructions(before?.constructions ?? [], after.constructions),
    ...(before ? renumbered(before, after) : []),
  ];
};

const compareTables = (before: WrittenTable | null, after: WrittenTable): readonly Change[] => {
  const old = namedRows(before);
  const now = namedRows(after);
  const whole = (kind: "added" | "removed", { name, known }: NamedRow): Change => ({
    file: after.file,
    kind,
    name,
    field: null,
    from: kind === "removed" ? known : null,
    to: kind === "added" ? known : null,
    text: `${name} is ${kind}.`,
  });
  const kept = [...now].flatMap(([key, row]): readonly Change[] => {
    const was = old.get(key);
    if (!was) return [whole("added", row)];
    return after.headings.flatMap((field, column): readonly Change[] => {
      const [from = "", to = ""] = [was.cells[column], row.cells[column]];
      if (from === to) return [];
      const text = `${row.name}: ${field} was ${from || "empty"}, becomes ${to || "empty"}.`;
      return [{ file: after.file, kind: "changed", name: row.name, field, from, to, text }];
    });
  });
  return [...kept, ...[...old].filter(([key]) => !now.has(key)).map(([, row]) => whole("removed", row))];
};

interface NamedRow {
  readonly name: string;
  readonly cells: readonly string[];
  /** Its cells that say anything, in one line. */
  readonly known: string;
}

/** Rows by the cells that name them (all cells where none do); of rows of one name the first is matched with the first. */
const namedRows = (table: WrittenTable | null): ReadonlyMap<string, NamedRow> => {
  const rows = new Map<string, NamedRow>();
  const counted = new Map<string, number>();
  if (!table) return rows;
  // Recasting a place is a change of that place: the performer does not name it.
  const columns = table.key.filter((column) => table.file !== "casting.csv" || table.headings[column] !== "performer");
  for (const cells of table.rows) {
    const parts = columns.length > 0 ? columns.map((column) => cells[column] ?? "") : cells;
    const key = JSON.stringify(parts);
    const count = (counted.get(key) ?? 0) + 1;
    counted.set(key, count);
    const known = cells.filter((cell) => cell !== "").join(", ");
    rows.set(`${key}${count}`, { name: parts.filter((part) => part !== "").join(", "), cells, known });
  }
  return rows;
};

/** Numbers follow the piece list and the casting, so a row in the middle moves all that come after it: labels may have been sewn in. */
const renumbered = (before: Staging, after: Staging): readonly Change[] => {
  const old = garmentsOf(before);
  const now = garmentsOf(after);
  const first = old.find((garment, index) => bodyOfGarment(garment) !== bodyOfGarment(now[index]));
  if (!first) return [];
  const text = `Garments from ${first.number} on get other numbers, or fall away.`;
  return [{ file: "pieces.csv", kind: "renumbered", name: first.number, field: null, from: null, to: null, text }];
};

const bodyOfGarment = (garment: Garment | undefined): string =>
  JSON.stringify([garment?.number, garment?.piece, garment?.wearers[0]?.cast, garment?.wearers[0]?.place]);
