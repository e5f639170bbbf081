import { breakDownOne } from "#lib/breakdown/breakDownOne";
import { SOURCES, type Source } from "#lib/casting/wardrobe";
import type { Construction } from "#lib/constructions/construction";
import type { Chance } from "#lib/levelling/random";
import type { Minutes } from "#lib/units/quantities";

/** A construction from a source, with the work of a first one for the construction's own body. */
export interface Kind {
  readonly construction: Construction;
  readonly source: Source;
  readonly minutes: Minutes;
}

/** Every way the constructions offer: built where they can be, else from wherever there is work to do; and stock to alter. */
export const kindsOf = (constructions: readonly Construction[]): readonly Kind[] =>
  constructions.flatMap((construction) => {
    const worked = SOURCES.filter((source) => construction.operations.some(({ sources }) => sources.includes(source)));
    const own = (["build", "buy"] as const).find((source) => worked.includes(source)) ?? worked[0];
    const sources = new Set([own, ...worked.filter((source) => source === "alter")]);
    return [...sources].flatMap((source) => (source ? [{ construction, source, minutes: firstMinutes(construction, source) }] : []));
  });

const firstMinutes = (construction: Construction, source: Source): Minutes => {
  const work = breakDownOne({
    garment: "",
    construction,
    source,
    parameters: {},
    body: {},
    chosen: {},
    materials: new Map(),
    ordinal: 1,
    oneLotSet: null,
    wearers: 1,
    reader: { words: "uk", lengths: "cm" },
  });
  return [...work.operations.map(({ minutes }) => minutes[1]), ...work.fittings.map(({ minutes }) => minutes)].reduce((a, b) => a + b, 0);
};

/** Kinds looked at for each piece: the more, the nearer the work comes to the average and the less it varies. */
const LOOKED_AT = 5;

/** Of a few kinds taken by chance, the one of which so many garments bring the work nearest to what is still wanted for them. */
export const drawKind = (kinds: readonly Kind[], wanted: Minutes, garments: number, chance: Chance): Kind => {
  const looked = Array.from({ length: LOOKED_AT }, () => kinds[chance.below(kinds.length)]!);
  const off = ({ minutes }: Kind) => Math.abs(garments * minutes - wanted);
  return looked.reduce((best, one) => (off(one) < off(best) ? one : best));
};
