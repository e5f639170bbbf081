import { writeFileSync } from "node:fs";
import { z } from "zod";
import { checkStrip } from "#lib/cutting/strip/checkStrip";
import { shortestStrip } from "#lib/cutting/strip/shortestStrip";
import { rounded, started } from "../cutting/clock";
import { benchCall, readLines, told } from "../cutting/readLines";

const HELP = `npm run -s bench:strip -- --file FILE.jsonl --json
npm run -s bench:strip -- --file FILE.jsonl --rotate --seconds 4 --limit 10 --out plans.jsonl

Shortest strips for published instances, one a line: id, W width, items [width, height, count], and what is known: opt, optRot.
--rotate lets pieces lie a quarter turn round. --seconds is the time for each (4 if not told), --cpu counts it on the processor.`;

const instance = z.object({
  id: z.string(),
  W: z.number().int().positive(),
  items: z.array(z.tuple([z.number().int().positive(), z.number().int().positive(), z.number().int().positive()])),
  opt: z.number().nullish(),
  optRot: z.number().nullish(),
});

const SEED = 1;
const call = benchCall(HELP, 4);
const results = readLines(call, instance).map(({ id, W, items, opt, optRot }) => {
  const pieces = items.flatMap(([width, height, count]) => Array.from({ length: count }, () => ({ width, height })));
  const job = { width: W, pieces, turned: call.rotate };
  const clock = started();
  const search = shortestStrip(job, SEED);
  let step = search.next();
  while (!step.done && (call.cpu ? clock.cpu() : clock.wall()) < call.seconds * 1000) step = search.next();
  const { placed, height, bound } = step.value;
  const best = (call.rotate ? (optRot ?? opt) : opt) ?? bound;
  const faults = [
    ...checkStrip(job, placed, height),
    ...(bound > best ? [`The bound ${bound} is above the ${best} that is known to be enough.`] : []),
  ];
  for (const fault of faults) process.stderr.write(`${id}: ${fault}\n`);
  return {
    best,
    illegal: faults.length > 0,
    line: { id, height, bound, proved: height === bound, placed: placed.map(({ x, y, width, height: along }) => [x, y, width, along]) },
  };
});
if (call.out !== undefined) writeFileSync(call.out, results.map(({ line }) => `${JSON.stringify(line)}\n`).join(""));
const figures = {
  instances: results.length,
  optimal: results.filter(({ line, best }) => line.height <= best).length,
  meanGapPercent: rounded(
    results.reduce((sum, { line, best }) => sum + (100 * (line.height - best)) / best, 0) / Math.max(1, results.length),
  ),
  illegal: results.filter(({ illegal }) => illegal).length,
};
process.stdout.write(told(figures, call.json));
process.exitCode = figures.illegal > 0 ? 1 : 0;
