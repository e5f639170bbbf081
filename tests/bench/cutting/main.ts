import { writeFileSync } from "node:fs";
import loadHighs from "highs";
import { z } from "zod";
import { checkFewest } from "#lib/cutting/fewest/checkFewest";
import { fewestStocks, lengthPlan } from "#lib/cutting/fewest/fewestStocks";
import { highsProgram } from "#lib/cutting/fewest/highsProgram";
import { jobOf } from "#lib/cutting/fewest/job";
import { quantile, rounded, started } from "./clock";
import { benchCall, readLines, told } from "./readLines";

const HELP = `npm run -s bench:cutting -- --file FILE.jsonl --json
npm run -s bench:cutting -- --file FILE.jsonl --seconds 20 --limit 10 --out plans.jsonl

Fewest stocks for published instances, one a line: id, c stock, w lengths, d how many of each, and what is known: opt, lb, ub.
--seconds is the time for each (20 if not told), --cpu counts it on the processor, for a machine that has other work.`;

const instance = z.object({
  id: z.string(),
  c: z.number().int().positive(),
  w: z.array(z.number().int().positive()),
  d: z.array(z.number().int().nonnegative()).optional(),
  opt: z.number().nullish(),
  ub: z.number().nullish(),
});

const call = benchCall(HELP, 20);
const open = highsProgram(await loadHighs());
const results = readLines(call, instance).map(({ id, c, w, d, opt, ub }) => {
  const counts = d ?? w.map(() => 1);
  const clock = started();
  const job = jobOf(c, w, counts);
  const search = fewestStocks(job, open);
  let step = search.next();
  while (!step.done && (call.cpu ? clock.cpu() : clock.wall()) < call.seconds * 1000) step = search.next();
  search.return(step.value);
  const ms = clock.wall();
  const cpuMs = clock.cpu();
  const plan = lengthPlan(job, step.value);
  const best = ub ?? opt ?? plan.bound;
  const faults = [
    ...checkFewest(
      plan,
      c,
      w.map((length, at) => [length, counts[at]!] as const),
    ),
    ...(plan.bound > best ? [`The bound ${plan.bound} is above the ${best} that is known to be enough.`] : []),
  ];
  for (const fault of faults) process.stderr.write(`${id}: ${fault}\n`);
  const { bins, bound, patterns } = plan;
  return { ms, cpuMs, best, illegal: faults.length > 0, line: { id, bins, bound, proved: bins === bound, patterns } };
});
if (call.out !== undefined) writeFileSync(call.out, results.map(({ line }) => `${JSON.stringify(line)}\n`).join(""));
const ms = results.map((result) => result.ms);
const cpuMs = results.map((result) => result.cpuMs);
const figures = {
  instances: results.length,
  proved: results.filter(({ line }) => line.proved).length,
  reachedBest: results.filter(({ line, best }) => line.bins <= best).length,
  meanGapPercent: rounded(
    results.reduce((sum, { line, best }) => sum + (100 * (line.bins - best)) / Math.max(1, best), 0) / Math.max(1, results.length),
  ),
  medianMs: quantile(ms, 0.5),
  p95Ms: quantile(ms, 0.95),
  medianCpuMs: quantile(cpuMs, 0.5),
  p95CpuMs: quantile(cpuMs, 0.95),
  illegal: results.filter(({ illegal }) => illegal).length,
};
process.stdout.write(told(figures, call.json));
process.exitCode = figures.illegal > 0 ? 1 : 0;
