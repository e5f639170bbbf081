import { parseArgs } from "node:util";
import { breakDown } from "#lib/breakdown/breakDown";
import { garmentsOf } from "#lib/casting/garments";
import { inventStagings } from "#lib/invented/inventStagings";
import { purchaseList } from "#lib/purchasing/purchaseList";
import { clothReady } from "#lib/purchasing/releases";
import { clothOnRolls } from "#lib/purchasing/rolls";
import { library } from "../../seed/constructions/library";
import { quantile, rounded, started } from "../cutting/clock";

const HELP = `npm run -s bench:purchasing -- --garments 1000 --json
npm run -s bench:purchasing -- --garments 1000 --times 20 --seed 3

Rolls the needs of an invented wardrobe up into a purchase list with its cutting plans, and into the first days of cutting. Times are
milliseconds of the clock in this process; the first is with nothing warmed up. Breaking the garments down is timed apart.

  --garments G   (1000)
  --times N      roll-ups measured after the first (10)
  --seed N       of the wardrobe (1)`;

const { values } = parseArgs({
  options: {
    garments: { type: "string", default: "1000" },
    times: { type: "string", default: "10" },
    seed: { type: "string", default: "1" },
    json: { type: "boolean", default: false },
    help: { type: "boolean", default: false },
  },
});
const numbers = [values.garments, values.times, values.seed];
if (values.help || numbers.some((text) => !/^[1-9]\d{0,4}$/.test(text))) {
  process.stderr.write(`${HELP}\n`);
  process.exit(values.help ? 0 : 2);
}
const [garments, times, seed] = numbers.map(Number) as [number, number, number];

const [staging] = inventStagings({ garments, makers: 40, weeks: null, tightness: 900, productions: 1, seed }, library);
const breaking = started();
const works = breakDown(staging, garmentsOf(staging));
const breakDownMs = rounded(breaking.wall());

const measured = (run: () => void) => {
  const clock = started();
  run();
  return { ms: clock.wall(), cpuMs: clock.cpu() };
};
const list = () => purchaseList(staging, works, () => null);
const first = measured(list);
const lists = Array.from({ length: times }, () => measured(list));
const releases = Array.from({ length: times }, () => measured(() => clothReady(staging, works, staging.production.starts)));
const made = list();
const rolls = measured(() => clothOnRolls({ staging, works, ...made }, ["net"], () => null));

const figures = {
  garments: works.length,
  needs: works.reduce((sum, work) => sum + work.needs.length, 0),
  lines: made.purchase.lines.length,
  breakDownMs,
  firstListMs: rounded(first.ms),
  listMedianMs: quantile(
    lists.map(({ ms }) => ms),
    0.5,
  ),
  listP95Ms: quantile(
    lists.map(({ ms }) => ms),
    0.95,
  ),
  listMedianCpuMs: quantile(
    lists.map(({ cpuMs }) => cpuMs),
    0.5,
  ),
  releasesMedianMs: quantile(
    releases.map(({ ms }) => ms),
    0.5,
  ),
  netOnRollsMs: rounded(rolls.ms),
};
process.stdout.write(
  values.json
    ? `${JSON.stringify(figures)}\n`
    : Object.entries(figures)
        .map(([name, value]) => `${name}: ${value}\n`)
        .join(""),
);
