import { readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { checkPlan } from "#lib/levelling/checker/checkPlan";
import { planAt } from "#lib/levelling/project/levelProject";
import { instanceOf } from "../../published/scheduling/instance";
import { isRcpsp, type RcpspLine } from "../../published/scheduling/rcpsp";
import { solve } from "../levelling/solve";
import { Threads } from "../levelling/threads";
import { referenceFor } from "./reference";

const HELP = `npm run -s bench:sideBySide -- --file FILE.jsonl --seconds 10 --limit 5 --threads 2

Projects (capacity, jobs), one a line, every instance first by the engine and then by the reference solver (Chuffed in MiniZinc,
as WebAssembly, on one thread) in the same seconds. Takes every --stride th instance of the file. Deviations in percent over the best known; where the
reference finds nothing it is counted in "referenceNothing" and left out of both means.`;

const { values } = parseArgs({
  options: {
    file: { type: "string" },
    seconds: { type: "string", default: "10" },
    limit: { type: "string", default: "5" },
    stride: { type: "string", default: "1" },
    threads: { type: "string" },
    help: { type: "boolean", default: false },
  },
});
if (values.help || values.file === undefined) {
  process.stderr.write(`${HELP}\n`);
  process.exit(values.help ? 0 : 2);
}
const seconds = Number(values.seconds);
const lines: RcpspLine[] = readFileSync(values.file, "utf8")
  .split("\n")
  .filter((line, i) => line.trim() !== "" && i % Number(values.stride) === 0)
  .map((line) => JSON.parse(line))
  .filter(isRcpsp)
  .slice(0, Number(values.limit));
const threads = values.threads === undefined ? null : new Threads(Number(values.threads));
const totals = { instances: lines.length, seconds, engineBetter: 0, alike: 0, referenceBetter: 0, referenceNothing: 0, illegal: 0 };
const engineOver: number[] = [];
const referenceOver: number[] = [];
for (const line of lines) {
  const instance = instanceOf(line)!;
  const engine = await solve(instance, { schedules: undefined, seconds, seed: 1, threads });
  const { start, proved } = await referenceFor(line, seconds);
  const plan = start === null ? null : planAt(instance.problem, Int32Array.from(start), 1);
  const reference = start === null ? null : Math.max(...line.jobs.map(([duration], i) => start[i]! + duration));
  if (engine.illegal || (plan !== null && checkPlan(instance.problem, plan).length > 0)) totals.illegal++;
  process.stderr.write(
    `${line.id}: engine ${engine.objective}, reference ${reference}${proved ? " (proved)" : ""}, best known ${line.best}\n`,
  );
  if (reference === null) totals.referenceNothing++;
  else {
    engineOver.push((100 * (engine.objective - line.best)) / line.best);
    referenceOver.push((100 * (reference - line.best)) / line.best);
    if (engine.objective < reference) totals.engineBetter++;
    else if (engine.objective > reference) totals.referenceBetter++;
    else totals.alike++;
  }
}
await threads?.end();
const mean = (values: readonly number[]): number | null =>
  values.length === 0 ? null : Math.round((1000 * values.reduce((sum, value) => sum + value, 0)) / values.length) / 1000;
process.stdout.write(
  `${JSON.stringify({ ...totals, engineMeanDeviationBest: mean(engineOver), referenceMeanDeviationBest: mean(referenceOver) })}\n`,
);
