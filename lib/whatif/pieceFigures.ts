import { breakDown } from "#lib/breakdown/breakDown";
import { givenParameters } from "#lib/breakdown/givenParameters";
import type { GarmentWork, Need, ThreePoint } from "#lib/breakdown/work";
import { garmentsOf } from "#lib/casting/garments";
import type { Piece } from "#lib/casting/wardrobe";
import { versionMeant } from "#lib/constructions/versions";
import type { Skill } from "#lib/labour/skills";
import type { Quantity } from "#lib/materials/material";
import type { Staging } from "#lib/staging/staging";
import type { MinorUnits, Minutes } from "#lib/units/quantities";
import { standardLabour } from "./labourRate";

/** What one garment of a piece takes, made for the first who wears it: likely minutes before batches, needs before waste and spare. */
export interface PieceFigures {
  readonly garments: number;
  readonly minutes: ThreePoint;
  readonly fittingMinutes: Minutes;
  readonly needs: readonly PieceNeed[];
  readonly labour: MinorUnits;
  /** Share of packs at the first price; needs that nobody sells cost nothing here. */
  readonly materials: MinorUnits;
  /** Skills nobody has, materials nobody sells: what the cost leaves out. */
  readonly nobody: readonly Skill[];
  readonly unsold: readonly string[];
  /** What is wrong with the parameters: the construction's own values stand in. */
  readonly problems: readonly string[];
  readonly work: GarmentWork;
}

interface PieceNeed {
  readonly material: string;
  readonly measure: Need["measure"];
  readonly quantity: Quantity;
  readonly cost: MinorUnits | null;
}

/** Figures of a piece of the staging as it would be; null where nobody wears it, so that there is no garment of it. */
export const pieceFigures = (staging: Staging, piece: Piece): PieceFigures | null => {
  const changed = { ...staging, pieces: staging.pieces.map((one) => (one.code === piece.code ? piece : one)) };
  const garments = garmentsOf(changed).filter((garment) => garment.piece === piece.code);
  const [first] = garments;
  if (!first) return null;
  const [work] = breakDown(changed, [first]) as readonly [GarmentWork];
  const { cost: labour, nobody } = standardLabour(staging.makers, [work]);
  const needs = summedNeeds(work.needs).map((need): PieceNeed => ({ ...need, cost: shareOfPack(staging, need) }));
  const construction = versionMeant(staging.constructions, piece.construction ?? "", piece.version);
  return {
    garments: garments.length,
    minutes: [minutesAt(work, 0), minutesAt(work, 1), minutesAt(work, 2)],
    fittingMinutes: work.fittings.reduce((sum, { minutes }) => sum + minutes, 0),
    needs,
    labour,
    materials: needs.reduce((sum, { cost }) => sum + (cost ?? 0), 0),
    nobody,
    unsold: needs.flatMap(({ cost, material }) => (cost === null ? [material] : [])),
    problems: construction ? givenParameters(construction, piece.parameters).problems : [],
    work,
  };
};

const minutesAt = ({ operations }: GarmentWork, point: 0 | 1 | 2): Minutes =>
  operations.reduce((sum, { minutes }) => sum + minutes[point], 0);

const summedNeeds = (needs: readonly Need[]): readonly Omit<PieceNeed, "cost">[] => {
  const sums = new Map<string, Omit<PieceNeed, "cost">>();
  for (const { material, measure, quantity } of needs)
    sums.set(material, { material, measure, quantity: quantity + (sums.get(material)?.quantity ?? 0) });
  return [...sums.values()];
};

const shareOfPack = ({ offers }: Staging, { material, quantity }: Omit<PieceNeed, "cost">): MinorUnits | null => {
  const costs = offers
    .filter((offer) => offer.material === material && offer.pack > 0)
    .flatMap(({ pack, prices: [first] }) => (first ? [(first.price * quantity) / pack] : []));
  return costs.length === 0 ? null : Math.round(Math.min(...costs));
};
