import type { Staging } from "#lib/staging/staging";
import { type CastCell, cellKey } from "./castCell";

/** What the grid is made of: nothing of it is private. */
export type CastingBoard = Pick<Staging, "casting" | "performers" | "roles" | "scenes" | "appearances">;

export interface GridColumn {
  readonly cast: string;
  readonly standing: "cast" | "cover";
}

export interface GridRow {
  readonly role: string;
  /** Null: the places of the role in one row, folded. */
  readonly place: number | null;
  readonly places: number;
}

export interface GridCell {
  /** Performers by code; empty: nobody yet. Null: the cast has no such place. */
  readonly performers: readonly string[] | null;
  /** What a place not yet cast stands on. */
  readonly sizeGroup: string;
}

/** Roles of more places than this are folded into one row until they are opened. */
const MOST_UNFOLDED = 4;

const NOBODY: GridCell = { performers: null, sizeGroup: "" };

/** Casts in the order the casting names them first, then those only asked for. */
export const castsOf = ({ casting }: Pick<Staging, "casting">, further: readonly string[] = []): readonly string[] => [
  ...new Set([...casting.map(({ cast }) => cast), ...further.filter((cast) => cast !== "")]),
];

/** Who dances, cast by cast, then who stands by: for the first cast, and for any other that has somebody. */
export const gridColumns = (board: Pick<Staging, "casting">, further: readonly string[], allCovers: boolean): readonly GridColumn[] => {
  const casts = castsOf(board, further);
  const covered = new Set(board.casting.filter(({ standing }) => standing === "cover").map(({ cast }) => cast));
  const withCovers = casts.filter((cast, at) => allCovers || at === 0 || covered.has(cast));
  return [
    ...casts.map((cast): GridColumn => ({ cast, standing: "cast" })),
    ...withCovers.map((cast): GridColumn => ({ cast, standing: "cover" })),
  ];
};

/** A row for each place, in the order of the roles; those of a large role in one, unless it is open. */
export const gridRows = (roles: CastingBoard["roles"], open: (role: string) => boolean): readonly GridRow[] =>
  roles.flatMap(({ code, places }): readonly GridRow[] => {
    if (places > MOST_UNFOLDED && !open(code)) return [{ role: code, place: null, places }];
    return Array.from({ length: places }, (_, index) => ({ role: code, place: index + 1, places }));
  });

/** Cells of the casting by their key. */
export class CastCells {
  private readonly cells = new Map<string, GridCell>();

  constructor({ casting }: Pick<Staging, "casting">) {
    for (const row of casting) {
      const key = cellKey(row);
      const known = this.cells.get(key)?.performers ?? [];
      this.cells.set(key, { performers: row.performer === null ? known : [...known, row.performer], sizeGroup: row.sizeGroup });
    }
  }

  at(cell: CastCell): GridCell {
    const found = this.cells.get(cellKey(cell));
    if (found) return found;
    const isDanced = cell.standing === "cover" && this.cells.has(cellKey({ ...cell, standing: "cast" }));
    return isDanced ? { performers: [], sizeGroup: "" } : NOBODY;
  }

  /** Of the places of a role in a cast: how many there are, and how many have somebody. */
  count({ cast, standing }: GridColumn, { role, places }: GridRow): { readonly of: number; readonly filled: number } {
    const cells = Array.from({ length: places }, (_, index) => this.at({ cast, role, place: index + 1, standing }));
    return {
      of: cells.filter(({ performers }) => performers !== null).length,
      filled: cells.filter(({ performers }) => performers !== null && performers.length > 0).length,
    };
  }
}
