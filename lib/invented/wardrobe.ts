import type { CastPlace, Performer, Role } from "#lib/casting/casting";
import type { Costume, GarmentSet, Piece } from "#lib/casting/wardrobe";
import type { Chance } from "#lib/levelling/random";
import type { Staging } from "#lib/staging/staging";
import type { Minutes } from "#lib/units/quantities";
import { materialCode } from "./goods";
import { drawKind, type Kind } from "./kinds";

const PEOPLE = [
  "Moths",
  "Lanterns",
  "Weavers",
  "Heralds",
  "Reeds",
  "Bellringers",
  "Ferrymen",
  "Embers",
  "Gleaners",
  "Tides",
  "Magpies",
  "Clerks",
];
const CORPS_PLACES = 8;

type Wardrobe = Pick<Staging, "roles" | "casting" | "scenes" | "appearances" | "costumes" | "sets" | "pieces" | "stock">;
type Open = { -readonly [K in keyof Wardrobe]: Wardrobe[K][number][] };

/**
 * Roles with costumes until there are so many garments, none of them due yet but at `due`.
 * @param average Minutes of work a garment should take in the mean.
 */
export const inventWardrobe = (
  code: string,
  garments: number,
  kinds: readonly Kind[],
  average: Minutes,
  performers: readonly Performer[],
  due: string,
  chance: Chance,
): { readonly wardrobe: Wardrobe; readonly minutes: Minutes } => {
  const all: Open = { roles: [], casting: [], scenes: [], appearances: [], costumes: [], sets: [], pieces: [], stock: [] };
  let minutes = 0;
  for (let made = 0; made < garments; ) {
    const role = inventRole(code, all.roles.length, Math.min(garments - made, performers.length), chance);
    const costume = addRole(all, role, performers, chance);
    const names = new Set<string>();
    for (let pieces = 1 + chance.below(3); pieces > 0 && made + role.places <= garments; pieces--) {
      const kind = drawKind(kinds, average * (made + role.places) - minutes, role.places, chance);
      if (names.has(kind.construction.code)) continue;
      names.add(kind.construction.code);
      addPiece(all, kind, role, costume, due, chance);
      made += role.places;
      minutes += role.places * kind.minutes;
    }
  }
  return { wardrobe: all, minutes };
};

const inventRole = (production: string, index: number, most: number, chance: Chance): Role => {
  const kind = chance.next() < 0.3 ? "corps" : chance.next() < 0.7 ? "soloist" : "principal";
  const wanted = kind === "corps" ? 3 + chance.below(CORPS_PLACES - 2) : kind === "soloist" ? 1 + chance.below(2) : 1;
  const name = `${PEOPLE[index % PEOPLE.length]} ${Math.floor(index / PEOPLE.length) + 1}`;
  return { code: `${production}-role-${index + 1}`, name, kind, places: Math.min(wanted, most) };
};

/** A scene of its own, a costume, and a cast; a soloist or principal has a cover. */
const addRole = (all: Open, role: Role, performers: readonly Performer[], chance: Chance): Costume => {
  const first = chance.below(performers.length);
  const dancer = (place: number) => performers[(first + place) % performers.length]!;
  const row = (place: number, body: number, standing: CastPlace["standing"]): CastPlace => {
    const { code, sizeGroup } = dancer(body);
    return { cast: "first", role: role.code, place, performer: code, sizeGroup, standing };
  };
  const costume: Costume = { code: role.code, name: role.name, role: role.code };
  all.scenes.push({ code: role.code, name: role.name, act: 1, starts: 5 * all.roles.length, minutes: 5 });
  all.roles.push(role);
  all.costumes.push(costume);
  all.appearances.push({ role: role.code, scene: role.code, costume: costume.code });
  all.casting.push(...Array.from({ length: role.places }, (_, at) => row(at + 1, at, "cast")));
  if (role.kind !== "corps" && role.places < performers.length) all.casting.push(row(1, role.places, "cover"));
  return costume;
};

const addPiece = (all: Open, { construction, source }: Kind, role: Role, costume: Costume, due: string, chance: Chance): void => {
  const code = `${role.code}-${construction.code}`;
  const name = `${role.name}: ${construction.name.uk}`;
  const set: GarmentSet | null =
    role.places > 1 && source === "build"
      ? { code, name, oneDyeLot: true, repair: 0, prototype: chance.next() < 0.3, freeUntil: null, approvalDays: 1, approvedOn: null }
      : null;
  if (set) all.sets.push(set);
  const stock = source === "alter" ? code : null;
  if (stock) all.stock.push({ number: stock, name, construction: construction.code, location: "", condition: "good", note: "" });
  const unnamed = construction.needs.filter(({ material }) => material === "");
  const piece: Piece = {
    code,
    costume: costume.code,
    name,
    source,
    construction: construction.code,
    version: null,
    set: set?.code ?? null,
    each: "performer",
    parameters: {},
    materials: Object.fromEntries(unnamed.map((need) => [need.role, materialCode(construction.code, need)])),
    due,
    weight: role.kind === "principal" ? 3 : role.kind === "soloist" ? 2 : 1,
    price: source === "buy" || source === "hire" ? 2000 : null,
    stock,
  };
  all.pieces.push(piece);
};
