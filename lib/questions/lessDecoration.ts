import type { WallMinute } from "#lib/calendar/plainDate";
import { versionMeant } from "#lib/constructions/versions";
import { SKILLS, type Skill } from "#lib/labour/skills";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Staging } from "#lib/staging/staging";
import type { MinorUnits, Minutes } from "#lib/units/quantities";
import type { Asked } from "./answer";

/** The stones, glued and sewn, that go on over the motifs of the first pass (common practice, no source). */
export const SECOND_PASS: readonly string[] = ["gluedStones", "sewnStones", "stones"];

export interface LessDecoration {
  /** Lines of the piece list that change, with the counts dropped. */
  readonly pieces: readonly { readonly piece: string; readonly parameters: readonly string[] }[];
  /** Standard minutes saved, by skill, batches counted once. */
  readonly skills: readonly { readonly skill: Skill; readonly saves: Minutes }[];
  readonly labour: MinorUnits;
  readonly materials: MinorUnits;
  readonly before: { readonly finish: WallMinute; readonly late: number };
  readonly after: { readonly finish: WallMinute; readonly late: number };
}

/** What is saved when counts of decoration are nothing, on one line of the piece list or on all: the production planned again without them. */
export const lessDecoration = async (
  { plan, replan }: Pick<Asked, "plan" | "replan">,
  piece: string | null,
  dropped: readonly string[],
): Promise<LessDecoration> => {
  const changes = changesOf(plan.staging, piece, dropped);
  const pieces = plan.staging.pieces.map((one) => {
    const parameters = changes.find((change) => change.piece === one.code)?.parameters ?? [];
    return { ...one, parameters: { ...one.parameters, ...Object.fromEntries(parameters.map((code) => [code, "0"])) } };
  });
  const after = changes.length === 0 ? plan : await replan({ ...plan.staging, pieces });
  const skills = SKILLS.map((skill) => ({ skill, saves: minutesOf(plan, skill) - minutesOf(after, skill) }));
  return {
    pieces: changes,
    skills: skills.filter(({ saves }) => saves !== 0),
    labour: plan.summary.labourCost - after.summary.labourCost,
    materials: plan.summary.materialCost - after.summary.materialCost,
    before: { finish: plan.summary.finish, late: plan.summary.lateGarments },
    after: { finish: after.summary.finish, late: after.summary.lateGarments },
  };
};

const minutesOf = ({ summary }: StagingPlan, skill: Skill): Minutes => summary.minutesBySkill[skill] ?? 0;

/** Counts that may be nothing and are not so already. */
const changesOf = ({ pieces, constructions }: Staging, piece: string | null, dropped: readonly string[]): LessDecoration["pieces"] =>
  pieces.flatMap(({ code, construction, version, source, parameters }) => {
    if ((piece !== null && piece !== code) || construction === null || source !== "build") return [];
    const known = versionMeant(constructions, construction, version)?.parameters ?? [];
    const counts = known.flatMap((one) =>
      one.kind === "count" && one.min === 0 && dropped.includes(one.code) && Number(parameters[one.code] ?? one.value) > 0
        ? [one.code]
        : [],
    );
    return counts.length === 0 ? [] : [{ piece: code, parameters: counts }];
  });
