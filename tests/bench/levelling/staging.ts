import { parseArgs } from "node:util";
import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { level } from "#lib/levelling/level";
import { workroomProblem } from "./workroom";

const HELP = `npm run -s bench:staging -- --garments 12 --makers 6 --weeks 10 --seconds 3 --json
npm run -s bench:staging -- --garments 350 --makers 40 --weeks 26 --seconds 20 --no-check

Levels a grown workroom: the time of the first plan (in a process that has not run the engine before, bounds and reasons
included), then the plan after so many seconds. --no-check leaves out the minute-by-minute judge, which is slow on large ones.`;

const { values } = parseArgs({
  allowNegative: true,
  options: {
    garments: { type: "string", default: "12" },
    makers: { type: "string", default: "6" },
    weeks: { type: "string", default: "10" },
    seconds: { type: "string", default: "3" },
    seed: { type: "string", default: "1" },
    check: { type: "boolean", default: true },
    json: { type: "boolean", default: false },
    help: { type: "boolean", default: false },
  },
});

if (values.help) {
  process.stderr.write(`${HELP}\n`);
  process.exit(0);
}
const problem = workroomProblem(Number(values.garments), Number(values.makers), Number(values.weeks), Number(values.seed));
const timed = (rounds: number, until: number) => {
  const began = performance.now();
  const answer = level(problem, { seed: 1, rounds, stop: () => performance.now() >= until });
  return { answer, milliseconds: Math.round(10 * (performance.now() - began)) / 10 };
};
const first = timed(0, 0);
const again = timed(0, 0);
const best = timed(1_000_000, performance.now() + 1000 * Number(values.seconds));
const { measures, bounds, plan, schedules } = best.answer;
const report = {
  tasks: problem.nodes.length,
  firstPlanMilliseconds: first.milliseconds,
  firstPlanAgainMilliseconds: again.milliseconds,
  firstWeightedLateness: first.answer.measures.weightedLateness,
  seconds: best.milliseconds / 1000,
  schedules,
  weightedLateness: measures.weightedLateness,
  latenessBound: bounds.weightedLateness,
  lateDues: measures.lateDues,
  overtimeMinutes: measures.overtimeMinutes,
  visits: measures.visits,
  unplaced: plan.unplaced.length,
  faults: values.check ? checkPlan(problem, plan).length : null,
};
process.stdout.write(
  values.json
    ? `${JSON.stringify(report)}\n`
    : `${Object.entries(report)
        .map(([name, value]) => `${name}: ${value}`)
        .join("\n")}\n`,
);
