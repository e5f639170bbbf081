import type { Garment } from "#lib/casting/wardrobe";
import type { Staging } from "./staging";

export type FoundKind = "performer" | "garment" | "role" | "costume" | "material" | "maker" | "construction";

/** Something that bears the words one looks for. */
export interface Found {
  readonly kind: FoundKind;
  /** Code, or the number of a garment. */
  readonly code: string;
  readonly name: string;
  /** What else tells it apart: who wears it, what it is. */
  readonly note: string;
}

const plain = (text: string): string => text.normalize("NFKD").replaceAll(/\p{M}/gu, "").toLowerCase().trim();

/**
 * Performers, garments, roles, costumes, materials, makers and constructions that bear every word of the question in their name, number, code or
 * note. What is called so entirely comes first, then what begins so, then what has words that begin so.
 */
export const find = (staging: Staging, garments: readonly Garment[], question: string, most = 60): readonly Found[] => {
  const wanted = plain(question);
  const parts = wanted.split(/\s+/).filter((part) => part !== "");
  if (parts.length === 0) return [];
  const ranked = everything(staging, garments).flatMap((one, order) => {
    const names = [one.code, one.name].map(plain);
    const all = plain(`${one.code} ${one.name} ${one.note}`);
    if (!parts.every((part) => all.includes(part))) return [];
    const starts = all.split(/[^\p{L}\p{N}]+/u);
    const rank = names.includes(wanted)
      ? 0
      : names.some((name) => name.startsWith(wanted))
        ? 1
        : parts.every((part) => starts.some((word) => word.startsWith(part)))
          ? 2
          : 3;
    return [{ one, rank, order }];
  });
  return ranked
    .toSorted((a, b) => a.rank - b.rank || a.order - b.order)
    .slice(0, most)
    .map(({ one }) => one);
};

const everything = (staging: Staging, garments: readonly Garment[]): readonly Found[] => {
  const { words } = staging.production;
  const people = new Map(staging.performers.map(({ code, name }) => [code, name]));
  const roles = new Map(staging.roles.map(({ code, name }) => [code, name]));
  const danced = (performer: string) =>
    [...new Set(staging.casting.filter((place) => place.performer === performer).map(({ role }) => roles.get(role) ?? role))].join(", ");
  const worn = (garment: Garment) =>
    [
      ...new Set(
        garment.wearers.map(({ performer, cast, place }) => (performer ? (people.get(performer) ?? performer) : `${cast} ${place}`)),
      ),
    ].join(", ");
  return [
    ...staging.performers.map(({ code, name }): Found => ({ kind: "performer", code, name, note: danced(code) })),
    ...garments.map((garment): Found => ({ kind: "garment", code: garment.number, name: garment.name, note: worn(garment) })),
    ...staging.roles.map(({ code, name, kind }): Found => ({ kind: "role", code, name, note: kind })),
    ...staging.costumes.map(({ code, name, role }): Found => ({ kind: "costume", code, name, note: roles.get(role) ?? role })),
    ...staging.materials.map(({ code, name, colour }): Found => ({ kind: "material", code, name, note: colour })),
    ...staging.makers.map(({ code, name, trade }): Found => ({ kind: "maker", code, name, note: trade })),
    ...[...new Map(staging.constructions.map((one) => [one.code, one])).values()].map(
      ({ code, name }): Found => ({ kind: "construction", code, name: name[words], note: "" }),
    ),
  ];
};
