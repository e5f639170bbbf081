import type { WallMinute } from "#lib/calendar/plainDate";
import { SKILLS, type Skill } from "#lib/labour/skills";
import type { GarmentState, StagingPlan } from "#lib/planning/stagingPlan";
import type { MinorUnits, Minutes } from "#lib/units/quantities";
import { ADDED, type Addition, addCostumes } from "./addCostumes";
import type { Asked } from "./answer";
import { milestoneWall } from "./dates";
import { hoursLeft } from "./hoursLeft";
import { sum } from "./told";

export interface SkillMore {
  readonly skill: Skill;
  /** Standard minutes more. */
  readonly more: Minutes;
  /** Standard minutes needed in all by the date, and those its makers would have if they did nothing else. */
  readonly needed: Minutes;
  readonly worth: Minutes;
}

export interface MoreCostumes {
  readonly addition: Addition;
  readonly due: WallMinute;
  /** Numbers of the added garments. */
  readonly added: readonly string[];
  /** Whether nothing is later, and nothing more without a place, than without them. */
  readonly fits: boolean;
  /** No plan at all has everything in time. */
  readonly proved: boolean;
  readonly before: { readonly late: number; readonly finish: WallMinute };
  readonly late: readonly GarmentState[];
  readonly unplaced: number;
  /** Last finish of all garments, and of the added ones; null when one has no place. */
  readonly finish: WallMinute;
  readonly addedFinish: WallMinute | null;
  readonly skills: readonly SkillMore[];
  readonly overtime: Minutes;
  readonly labour: MinorUnits;
  readonly materials: MinorUnits;
  /** Most that were found to fit with nothing later than before. */
  readonly most: number;
  readonly mends: readonly string[];
}

/** What comes of more costumes: the whole production planned again with them, and with fewer until they fit. */
export const moreCostumes = async (
  { plan, replan, today }: Pick<Asked, "plan" | "replan" | "today">,
  addition: Addition,
): Promise<MoreCostumes> => {
  const added = await replan(addCostumes(plan.staging, addition));
  const fits = fitsIn(plan, added);
  let most = fits ? addition.count : addition.count - 1;
  while (!fits && most > 0 && !fitsIn(plan, await replan(addCostumes(plan.staging, { ...addition, count: most })))) most--;
  const numbers = added.garments.filter(({ piece }) => piece === ADDED).map(({ number }) => number);
  const states = added.garmentStates.filter(({ garment }) => numbers.includes(garment));
  const milestone = addition.due ?? plan.staging.pieces.find(({ code }) => code === addition.like)!.due;
  return {
    addition,
    due: milestoneWall(plan.staging.milestones.find(({ code }) => code === milestone)!),
    added: numbers,
    fits,
    proved: added.answer.bounds.weightedLateness > plan.answer.measures.weightedLateness,
    before: { late: plan.summary.lateGarments, finish: plan.summary.finish },
    late: added.garmentStates.filter(({ minutesLate }) => minutesLate > 0),
    unplaced: added.answer.plan.unplaced.length,
    finish: added.summary.finish,
    addedFinish: states.some(({ finish }) => finish === null) ? null : Math.max(...states.map(({ finish }) => finish!)),
    skills: skillsMore(plan, added, today, milestone),
    overtime: added.summary.overtimeMinutes - plan.summary.overtimeMinutes,
    labour: added.summary.labourCost - plan.summary.labourCost,
    materials: added.summary.materialCost - plan.summary.materialCost,
    most,
    mends: [...new Set(added.notes.filter(({ kind }) => kind === "late" || kind === "unplaced").map(({ mend }) => mend))].filter(
      (mend) => mend !== "",
    ),
  };
};

const fitsIn = (before: StagingPlan, after: StagingPlan): boolean =>
  after.answer.plan.unplaced.length <= before.answer.plan.unplaced.length &&
  after.answer.measures.weightedLateness <= before.answer.measures.weightedLateness;

const skillsMore = (before: StagingPlan, after: StagingPlan, today: Asked["today"], milestone: string): readonly SkillMore[] =>
  SKILLS.flatMap((skill) => {
    const more = (after.summary.minutesBySkill[skill] ?? 0) - (before.summary.minutesBySkill[skill] ?? 0);
    if (more === 0) return [];
    const { needed, makers } = hoursLeft(after, today, skill, milestone);
    return [{ skill, more, needed, worth: sum(makers.map(({ worth }) => worth)) }];
  });
