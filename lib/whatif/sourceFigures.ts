import type { GarmentWork, ThreePoint } from "#lib/breakdown/work";
import { dayNumber } from "#lib/calendar/days";
import { MINUTES_PER_DAY, type PlainDate, type WallMinute } from "#lib/calendar/plainDate";
import type { Skill } from "#lib/labour/skills";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { purchaseList } from "#lib/purchasing/purchaseList";
import type { MinorUnits, Minutes } from "#lib/units/quantities";
import { standardLabour } from "./labourRate";

/** What all garments of one piece take, from the source they have in a plan. */
export interface SourceFigures {
  readonly garments: number;
  /** Low, likely and high standard minutes of work, before batches. */
  readonly minutes: ThreePoint;
  readonly fittingMinutes: Minutes;
  /** Likely minutes and fittings at the mean cost of the makers who have each skill. */
  readonly labour: MinorUnits;
  /** By so much the purchase list grows. */
  readonly materials: MinorUnits;
  readonly price: MinorUnits;
  readonly total: MinorUnits;
  /** When the last of them is finished in a plan of the whole workroom; null when the plan has no place for it. */
  readonly finish: WallMinute | null;
  readonly due: WallMinute;
  /** Garments of the whole staging that are late in that plan. */
  readonly lateGarments: number;
}

/** Figures of a piece in a plan; one that needs no work is finished when it is `there`. Also the skills it asks for that nobody has. */
export const sourceFigures = (
  plan: StagingPlan,
  piece: string,
  there: PlainDate,
): { readonly figures: SourceFigures; readonly idle: boolean; readonly nobody: readonly Skill[] } => {
  const garments = plan.garments.filter((garment) => garment.piece === piece);
  const numbers = new Set(garments.map(({ number }) => number));
  const works = plan.works.filter((work) => numbers.has(work.garment));
  const { cost: labour, nobody } = standardLabour(plan.staging.makers, works);
  const materials = boughtFor(plan, numbers);
  const price = garments.reduce((sum, garment) => sum + (garment.price ?? 0), 0);
  const states = plan.garmentStates.filter(({ garment }) => numbers.has(garment));
  const idle = new Set(works.filter(isIdle).map(({ garment }) => garment));
  const finishes = states.flatMap(({ garment, finish }) => (idle.has(garment) ? dayNumber(there) * MINUTES_PER_DAY : (finish ?? [])));
  const figures: SourceFigures = {
    garments: garments.length,
    minutes: [minutesAt(works, 0), minutesAt(works, 1), minutesAt(works, 2)],
    fittingMinutes: works.flatMap(({ fittings }) => fittings).reduce((sum, { minutes }) => sum + minutes, 0),
    labour,
    materials,
    price,
    total: labour + materials + price,
    finish: finishes.length === states.length && finishes.length > 0 ? Math.max(...finishes) : null,
    due: Math.min(...states.map(({ due }) => due)),
    lateGarments: plan.summary.lateGarments,
  };
  return { figures, idle: idle.size === works.length, nobody };
};

const isIdle = ({ operations, fittings }: GarmentWork) => operations.length + fittings.length === 0;

const minutesAt = (works: readonly GarmentWork[], point: 0 | 1 | 2): Minutes =>
  works.flatMap(({ operations }) => operations).reduce((sum, { minutes }) => sum + minutes[point], 0);

/** The purchase list with and without what is needed for these: packs are bought whole, so that a share of one may cost nothing or all of it. */
const boughtFor = ({ staging, works, purchase }: StagingPlan, numbers: ReadonlySet<string>): MinorUnits => {
  const others = works.filter((work) => !numbers.has(work.garment));
  return purchase.materials - purchaseList(staging, others, () => null).purchase.materials;
};
