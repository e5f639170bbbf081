import type { Located, Tables } from "../tables";
import { faultIn, type Rule } from "./rule";

const FILE = "casting.csv";
type Row = Tables["casting"][number] extends Located<infer R> ? Partial<R> : never;

const placeName = (row: Row): string => JSON.stringify([row.cast, row.role, row.place]);

/** Places lie within the role, are danced by one body in a cast, are covered only where danced, and stand on a size group. */
export const castingRules: Rule = ({ casting, roles }) => {
  const placesOf = new Map(roles.map(({ values }) => [values.code, values.places]));
  const danced = new Map<string, number>();
  for (const { row, values } of casting)
    if (values.standing === "cast" && !danced.has(placeName(values))) danced.set(placeName(values), row);
  return casting.flatMap(({ row, values }) => {
    const { role, place, performer, sizeGroup, standing } = values;
    const most = placesOf.get(role) ?? Number.POSITIVE_INFINITY;
    if (place !== undefined && place > most)
      return [
        faultIn(FILE, row, "place", `The role ${role} has ${most} places.`, "Write a lower place, or give the role more in roles.csv."),
      ];
    if (standing === "cast" && danced.get(placeName(values)) !== row)
      return [
        faultIn(
          FILE,
          row,
          "place",
          `Row ${danced.get(placeName(values))} casts this place already.`,
          "Change the cast or the place, or make it a cover.",
        ),
      ];
    if (standing === "cover" && performer === null)
      return [faultIn(FILE, row, "performer", "A cover has no name.", "Name the performer who covers, or take the row out.")];
    if (standing === "cover" && !danced.has(placeName(values)))
      return [faultIn(FILE, row, "place", "It covers a place that nobody is cast in.", "Add a row that casts the place in this cast.")];
    if (performer === null && sizeGroup === null)
      return [faultIn(FILE, row, "size_group", "A place not yet cast has no size group.", "Write the size group it stands on.")];
    return [];
  });
};

/** A place without a row would have no garment, and nobody would notice. */
export const uncastPlaces: Rule = ({ casting, roles, costumes }) => {
  const worn = new Set(costumes.map(({ values }) => values.role));
  const cast = new Set(casting.filter(({ values }) => values.standing === "cast").map(({ values }) => `${values.place} ${values.role}`));
  return roles.flatMap(({ row, values: { code, places } }) => {
    if (code === undefined || places === undefined || !worn.has(code)) return [];
    const missing = Array.from({ length: places }, (_, index) => index + 1).filter((place) => !cast.has(`${place} ${code}`));
    if (missing.length === 0) return [];
    const which = `${missing.slice(0, 5).join(", ")}${missing.length > 5 ? " ..." : ""}`;
    return [
      faultIn(
        "roles.csv",
        row,
        "places",
        `No cast has place ${which} of ${code}.`,
        "Add a row to casting.csv for each, with a size group if nobody is cast yet, or lower the places.",
      ),
    ];
  });
};
