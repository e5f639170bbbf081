import type { Staging } from "#lib/staging/staging";
import type { CastPlace } from "./casting";
import type { Wearer } from "./wardrobe";

/** A place of a role in one cast: who dances it, and who covers it. */
export interface DancedPlace {
  readonly wearer: Wearer;
  readonly covers: readonly Wearer[];
}

const wearer = (row: CastPlace): Wearer => ({
  performer: row.performer,
  sizeGroup: row.sizeGroup,
  cast: row.cast,
  place: row.place,
  standing: row.standing,
});

/** Casts in the order the casting names them first, places of each in order; a cover stands with the place it covers. */
export const placesOf = (staging: Pick<Staging, "casting">, role: string): readonly DancedPlace[] => {
  const casts = [...new Set(staging.casting.map((row) => row.cast))];
  const rows = staging.casting.filter((row) => row.role === role);
  return rows
    .filter((row) => row.standing === "cast")
    .sort((a, b) => casts.indexOf(a.cast) - casts.indexOf(b.cast) || a.place - b.place)
    .map((row) => ({
      wearer: wearer(row),
      covers: rows.filter((each) => each.standing === "cover" && each.cast === row.cast && each.place === row.place).map(wearer),
    }));
};
