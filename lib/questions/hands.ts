import type { MinorUnits } from "#lib/units/quantities";
import { standardLabour } from "#lib/whatif/labourRate";
import type { Remedy } from "#lib/whatif/remedies/remedy";
import { type WhatHelps, whatHelps } from "#lib/whatif/remedies/whatHelps";
import type { Asked } from "./answer";

/** More hands, overtime, or sending out. */
export interface HandsAsked {
  readonly hands: Remedy & { readonly kind: "maker" };
  readonly overtime: Remedy & { readonly kind: "overtime" };
  readonly out: Remedy & { readonly kind: "outwork" };
  /** Nobody gave a price: it is what the same work costs here. */
  readonly priceIsOurs: boolean;
}

/** The first so many garments of a piece that are made here, at a price, or at what they cost here when none is known. */
export const sentOut = (
  { garments, works, staging }: Asked["plan"],
  piece: string,
  most: number,
  price: MinorUnits | null,
): { readonly garments: readonly string[]; readonly price: MinorUnits } => {
  const sent = garments.filter((garment) => garment.piece === piece && garment.source === "build").slice(0, most);
  const numbers = new Set(sent.map(({ number }) => number));
  const made = works
    .filter(({ garment }) => numbers.has(garment))
    .map((work) => ({ ...work, operations: work.operations.filter(({ skill }) => skill !== "pattern"), fittings: [] }));
  const { cost } = standardLabour(staging.makers, made);
  return { garments: [...numbers], price: price ?? Math.round(cost / Math.max(1, numbers.size)) };
};

/** Each of the three as a plan of its own, beside the plan with nothing changed; in the order of the question. */
export const compareHands = async ({ plan, today, relevel }: Asked, { hands, overtime, out }: HandsAsked): Promise<WhatHelps> => {
  const remedies: readonly Remedy[] = [hands, overtime, out];
  const found = await whatHelps(plan, remedies, { today, level: (problem) => relevel(problem, null) });
  return { ...found, answers: [...found.answers].sort((a, b) => remedies.indexOf(a.remedy) - remedies.indexOf(b.remedy)) };
};
