import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import type { EngineReport } from "./measure";
import { ordered } from "./ordered";

const HELP = `npm run -s bench:staging -- --garments 180 --makers 9 --seconds 10 --json
npm run -s bench:staging -- --garments 400 --makers 20 --tightness 95 --productions 2 --seed 3 --seconds 10
npm run -s bench:staging -- --garments 4000 --makers 160 --seconds 1 --no-check

Levels an invented workroom. Its due dates are planted: a hidden legal plan keeps every one of them without overtime.
The engine runs in a process of its own that has done nothing else: time of the first plan, then the plan after so many seconds.

  --garments G      of all productions together (180)
  --makers M        (9)
  --weeks W         until the last parade (as many as garments of the usual work take)
  --tightness P     per cent: share of the makers' hours, and of the way to each due date that the hidden plan takes (95)
  --productions N   that share the workroom (1)
  --no-planted      every garment of a production is due at its parade, possible or not
  --no-check        leave out the minute-by-minute judge, which is slow on large ones
  --seconds S       for the search (3)
  --seed N          of the workroom (1)`;

const WHOLE = { garments: "180", makers: "9", tightness: "95", productions: "1", seconds: "3", seed: "1" } as const;

const { values } = parseArgs({
  allowNegative: true,
  options: {
    ...(Object.fromEntries(Object.entries(WHOLE).map(([name, value]) => [name, { type: "string", default: value }])) as Record<
      keyof typeof WHOLE,
      { type: "string"; default: string }
    >),
    weeks: { type: "string" },
    planted: { type: "boolean", default: true },
    check: { type: "boolean", default: true },
    json: { type: "boolean", default: false },
    help: { type: "boolean", default: false },
  },
});
const given = Object.entries({ ...values, weeks: values.weeks ?? "1" }).filter(([name]) => name in WHOLE || name === "weeks");
const unreadable = given.find(([, value]) => !/^[1-9]\d{0,5}$/.test(String(value)))?.[0];
if (values.help || unreadable) {
  process.stderr.write(unreadable ? `--${unreadable} takes a whole number, 1 or more.\n` : `${HELP}\n`);
  process.exit(unreadable ? 2 : 0);
}

const order = {
  garments: Number(values.garments),
  makers: Number(values.makers),
  weeks: values.weeks === undefined ? null : Number(values.weeks),
  tightness: 10 * Number(values.tightness),
  productions: Number(values.productions),
  seed: Number(values.seed),
};
const { problem, weeks } = ordered(order, values.planted);

const folder = mkdtempSync(join(tmpdir(), "tarlatan-bench-"));
const file = join(folder, "problem.json");
writeFileSync(file, JSON.stringify(problem));
const engine = spawnSync(
  process.execPath,
  ["--import", "tsx", join(import.meta.dirname, "engine.ts"), file, values.seconds, String(values.check)],
  {
    encoding: "utf8",
    stdio: ["ignore", "pipe", "inherit"],
  },
);
rmSync(folder, { recursive: true });
if (engine.status !== 0) process.exit(1);
const measured = JSON.parse(engine.stdout) as EngineReport;
const report = { ...order, weeks, planted: values.planted, ...measured };
process.stdout.write(
  values.json
    ? `${JSON.stringify(report)}\n`
    : `${Object.entries(report)
        .map(([name, value]) => `${name}: ${value}`)
        .join("\n")}\n`,
);
process.exitCode = measured.faults ? 1 : 0;
