import { readFileSync, writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { readInstances } from "./readInstances";
import { solve } from "./solve";
import { type BenchResult, schedulesPerCpuSecond, summary } from "./summary";
import { Threads } from "./threads";

const HELP = `npm run -s bench:levelling -- --file FILE.jsonl --schedules 1000 --json
npm run -s bench:levelling -- --file FILE.jsonl --seconds 10 --limit 20 --seed 3 --out results.jsonl

Solves published instances, one a line: resource-constrained (capacity, jobs), multi-skill (workers, jobs) or weighted tardiness
(processing, weight, due). --schedules is the budget for each instance by the field's counting, --seconds the time for each.
--threads T levels projects on islands, whose number is fixed: the same plan on any number of threads, within one budget for all.`;

const { values } = parseArgs({
  options: {
    file: { type: "string" },
    schedules: { type: "string" },
    seconds: { type: "string" },
    limit: { type: "string" },
    seed: { type: "string", default: "1" },
    threads: { type: "string" },
    out: { type: "string" },
    json: { type: "boolean", default: false },
    help: { type: "boolean", default: false },
  },
});

if (values.help || values.file === undefined) {
  process.stderr.write(`${HELP}\n`);
  process.exit(values.help ? 0 : 2);
}
const read = readInstances(readFileSync(values.file, "utf8"), values.limit === undefined ? Number.POSITIVE_INFINITY : Number(values.limit));
if (!read.ok) {
  process.stderr.write(`${values.file}: ${read.error}\n`);
  process.exit(2);
}
const schedules = values.schedules === undefined ? undefined : Number(values.schedules);
const seconds = values.seconds === undefined ? undefined : Number(values.seconds);
const threads = values.threads === undefined ? null : new Threads(Number(values.threads));
const results: BenchResult[] = [];
for (const instance of read.value) results.push(await solve(instance, { schedules, seconds, seed: Number(values.seed), threads }));
await threads?.end();
if (values.out !== undefined) writeFileSync(values.out, results.map(({ line }) => `${JSON.stringify(line)}\n`).join(""));
const totals = summary(results);
process.stdout.write(
  values.json
    ? `${JSON.stringify(totals)}\n`
    : `${Object.entries(totals)
        .map(([name, value]) => `${name}: ${value}`)
        .join("\n")}\n`,
);
process.stderr.write(`schedules a second of the processor: ${schedulesPerCpuSecond(results)}\n`);
process.exitCode = totals.illegal > 0 ? 1 : 0;
