import type { PlainDate } from "#lib/calendar/plainDate";
import { faultText } from "#lib/exchange/fault";
import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { level } from "#lib/levelling/level";
import { assemble } from "#lib/planning/assemble";
import { prepare } from "#lib/planning/prepare";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Staging } from "#lib/staging/staging";
import { readFolder } from "../../app/_cli/readFolder";

/** The day every plan of the small stagings is made on: the production's first. */
export const TODAY = "2027-01-11" as PlainDate;

/** A staging of the seed. */
export const seedStaging = async (name: string) => {
  const read = await readFolder(new URL(`../../seed/${name}`, import.meta.url).pathname);
  if (!read.ok) throw new Error(read.error.map(faultText).join("\n"));
  return read.value;
};

/** Planned here and now, and judged by the checker: a plan that breaks a rule fails whatever test asked for it. */
export const plannedStaging = (staging: Staging, rounds: number, seed = 1): StagingPlan => {
  const prepared = prepare(staging, { today: TODAY });
  const answer = level(prepared.problem, { seed, rounds, stop: () => false });
  const wrong = checkPlan(prepared.problem, answer.plan);
  if (wrong.length > 0) throw new Error(`The checker refuses the plan: ${wrong.join(" ")}`);
  return assemble(prepared, answer);
};

/** A staging of the seed, planned. */
export const planned = async (name: string, rounds: number, seed = 1): Promise<StagingPlan> =>
  plannedStaging(await seedStaging(name), rounds, seed);
