import type { Staging } from "#lib/staging/staging";
import type { CastCell, Recast } from "./castCell";
import type { CastPlace } from "./casting";

type Casting = Pick<Staging, "casting" | "performers">;

/**
 * The staging with some cells of its casting changed, one after the other; every other row stays where it is. A place that is cast stands
 * on the size group of who dances it; one that is emptied keeps the group it had. With a place go those who stood by for it.
 */
export const recast = <Cast extends Casting>(staging: Cast, changes: readonly Recast[]): Cast => {
  const groupOf = new Map(staging.performers.map(({ code, sizeGroup }) => [code, sizeGroup]));
  const casting = changes.reduce<readonly CastPlace[]>(
    (rows, change) => (change.standing === "cast" ? withDancer(rows, change, groupOf) : withCovers(rows, change, groupOf)),
    staging.casting,
  );
  return { ...staging, casting };
};

type Groups = ReadonlyMap<string, string>;

const isOf = (row: CastPlace, { cast, role, place }: CastCell): boolean => row.cast === cast && row.role === role && row.place === place;

const withDancer = (rows: readonly CastPlace[], change: Recast, groupOf: Groups): readonly CastPlace[] => {
  const { cast, role, place, performers } = change;
  if (performers === null) return rows.filter((row) => !isOf(row, change));
  const performer = performers[0] ?? null;
  const at = rows.findIndex((row) => isOf(row, change) && row.standing === "cast");
  const group = (performer === null ? undefined : groupOf.get(performer)) ?? rows[at]?.sizeGroup ?? alikeGroup(rows, change);
  const row: CastPlace = { cast, role, place, performer, sizeGroup: group, standing: "cast" };
  if (at >= 0) return rows.with(at, row);
  return rows.toSpliced(rows.findLastIndex((one) => one.cast === cast && one.role === role) + 1 || rows.length, 0, row);
};

/** The group the same place has in another cast, or any place of the role. */
const alikeGroup = (rows: readonly CastPlace[], { role, place }: CastCell): string => {
  const alike = rows.filter((row) => row.role === role && row.standing === "cast");
  return (alike.find((row) => row.place === place) ?? alike[0])?.sizeGroup ?? "";
};

/** Covers stand behind the place they cover; there is none to cover where nobody is to dance. */
const withCovers = (rows: readonly CastPlace[], change: Recast, groupOf: Groups): readonly CastPlace[] => {
  const { cast, role, place } = change;
  const others = rows.filter((row) => !(isOf(row, change) && row.standing === "cover"));
  const at = others.findIndex((row) => isOf(row, change));
  if (at < 0) return others;
  const covers = [...new Set(change.performers ?? [])].map(
    (performer): CastPlace => ({ cast, role, place, performer, sizeGroup: groupOf.get(performer) ?? "", standing: "cover" }),
  );
  return others.toSpliced(at + 1, 0, ...covers);
};
