import { type Person, POOLS, type Pool } from "./people";

/** A role with who may dance it and the scenes it is seen in. */
export interface RoleToCast {
  readonly code: string;
  readonly kind: string;
  readonly places: number;
  readonly scenes: readonly string[];
}

export interface CastRow {
  readonly cast: string;
  readonly role: string;
  readonly place: number;
  readonly person: Person;
  readonly standing: "cast" | "cover";
}

/** One cover learns so many places; she is fitted in the first of them. */
const PLACES_COVERED = 4;

const MEN = ["aldren", "harbourmaster", "ferryman", "heron", "lamplighter", "clockmen", "fishermen", "eels", "guests-men", "lanterns"];
const poolOf = (role: string): Pool => (role === "ropewalk" ? "students" : MEN.includes(role) ? "men" : "women");

/**
 * Two casts of all roles but the corps and the students, who dance on every night. Nobody is two bodies in one scene of a cast, nor dances the
 * same place in both. Every role has a cover in the first cast: single roles one, a corps one for every four places.
 */
export const castAll = (roles: readonly RoleToCast[]): readonly CastRow[] => {
  const rows: CastRow[] = [];
  const turn: Record<Pool, number> = { women: 0, men: 0, students: 0 };
  const seats = ["first", "second"].flatMap((cast) => roles.map((role) => ({ cast, role })));
  for (const { cast, role } of seats) {
    const pool = poolOf(role.code);
    const next = (place: number): Person => {
      const people = POOLS[pool];
      for (let tried = 0; tried < people.length; tried++) {
        const person = people[turn[pool]++ % people.length]!;
        if (rows.every((row) => row.person !== person || isFree(row, cast, role, place, roles))) return person;
      }
      throw new Error(`Nobody is free to dance ${role.code} ${place} in the ${cast} cast.`);
    };
    if (cast === "second" && (pool === "students" || role.kind === "corps")) continue;
    for (let place = 1; place <= role.places; place++) rows.push({ cast, role: role.code, place, person: next(place), standing: "cast" });
    if (cast === "first" && pool !== "students")
      for (let place = 1; place <= role.places; place += PLACES_COVERED)
        rows.push({ cast, role: role.code, place, person: next(place), standing: "cover" });
  }
  return rows;
};

/** Whether somebody with this row may dance the place too. */
const isFree = (row: CastRow, cast: string, role: RoleToCast, place: number, roles: readonly RoleToCast[]): boolean => {
  if (row.role === role.code) return row.cast !== cast && row.place !== place;
  const scenes = roles.find(({ code }) => code === row.role)!.scenes;
  return row.cast !== cast || row.standing === "cover" || !scenes.some((scene) => role.scenes.includes(scene));
};

export const castingRows = (rows: readonly CastRow[]): (readonly string[])[] => [
  ["cast", "role", "place", "performer", "size_group", "standing"],
  ...rows.map(({ cast, role, place, person, standing }) => [cast, role, String(place), person.code, "", standing]),
];
