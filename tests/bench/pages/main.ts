/**
 * npm run -s bench:pages [-- --staging seed/small] [--times N] [--json]
 *
 * Serves the app as `npm start` does, brings a staging in (seed/company unless said), levels it, and measures each page as its supervisor:
 * time to the first byte (median of N), scripts in KiB as they are sent, how far the layout shifts, and what axe finds in light and dark.
 */
import { parseArgs } from "node:util";
import { chromium, type Page } from "@playwright/test";
import { launchOptions } from "../../browser/support/findBrowser";
import { findRoutes, pagePatterns } from "../../browser/support/routes";
import { signIn } from "../../browser/support/signIn";
import { startApp } from "../../browser/support/startApp";
import { bringIn } from "./bringIn";
import { countShifts, type PageFigures, pageFigures } from "./pageFigures";

const { values } = parseArgs({
  options: {
    staging: { type: "string", default: "seed/company" },
    times: { type: "string", default: "11" },
    json: { type: "boolean", default: false },
  },
});

const line = ({ pattern, firstByte, scripts, shift, axe }: PageFigures): string =>
  [pattern.padEnd(64), `${firstByte.toFixed(0)} ms`.padStart(8), `${scripts.toFixed(0)} KiB`.padStart(8), shift.toFixed(3), axe].join("  ");

const measure = async (page: Page, address: string): Promise<readonly PageFigures[]> => {
  const home = await bringIn(page, address, values.staging);
  const routes = await findRoutes(page, address, home);
  const missed = pagePatterns().filter((pattern) => !routes.has(pattern));
  if (missed.length > 0) console.error(`No link led to: ${missed.join(", ")}`);
  const figures: PageFigures[] = [];
  for (const [pattern, route] of [...routes].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const of = await pageFigures(page, { pattern, address: address + route, times: Number(values.times) });
    if (!values.json) console.log(line(of));
    figures.push(of);
  }
  return figures;
};

const app = await startApp();
const browser = await chromium.launch(await launchOptions());
try {
  const supervisor = app.people.find(({ role }) => role === "supervisor");
  if (!supervisor) throw new Error("The demonstration has no supervisor.");
  const page = await (await browser.newContext({ viewport: { width: 1440, height: 900 } })).newPage();
  await countShifts(page);
  await signIn(page, app.address, supervisor);
  const figures = await measure(page, app.address);
  if (values.json) console.log(JSON.stringify(figures));
} finally {
  await browser.close();
  await app.stop();
}
