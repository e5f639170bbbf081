/**
 * Takes pictures of every page, at 1440 and 390 px, light and dark, into .tarlatan/screenshots (not kept).
 *
 *   npm run -s screenshots                                   starts an app with the demonstration, as its supervisor
 *   npm run -s screenshots -- /productions /import           these pages only
 *   npm run -s screenshots -- --at http://127.0.0.1:3000 --as EMAIL --password P      of an app that runs already
 *   npm run -s screenshots -- --role maker                   as another of the demonstration's users
 *
 * Without a list, links are followed from the first page until each page file has been met; those never met are named.
 * For one picture of any address see shoot.ts.
 */
import { mkdir } from "node:fs/promises";
import { parseArgs } from "node:util";
import { type Browser, chromium, type Page } from "@playwright/test";
import { launchOptions } from "./findBrowser";
import { findRoutes, pagePatterns } from "./routes";
import { signIn } from "./signIn";
import { type App, startApp } from "./startApp";

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    at: { type: "string" },
    as: { type: "string" },
    password: { type: "string" },
    role: { type: "string", default: "supervisor" },
  },
});
const folder = ".tarlatan/screenshots";

async function openApp(): Promise<App> {
  if (!values.at) return startApp();
  const people = [{ role: values.role, email: values.as ?? "", password: values.password ?? "" }];
  return { address: values.at, people, stop: async () => {} };
}

async function picture(browser: Browser, { address, people }: App): Promise<void> {
  const person = people.find(({ role }) => role === values.role);
  if (!person) throw new Error(`There is no ${values.role} among ${people.map(({ role }) => role).join(", ")}.`);
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await signIn(page, address, person);
  const routes = positionals.length > 0 ? positionals : await everyPage(page, address);
  for (const [width, height] of [
    [1440, 900],
    [390, 844],
  ] as const) {
    await page.setViewportSize({ width, height });
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      for (const route of routes) {
        const answer = await page.goto(address + route, { waitUntil: "networkidle" });
        const name = route.replaceAll(/[^\w.-]+/g, "_").replaceAll(/^_|_$/g, "") || "first";
        const file = `${folder}/${name}-${width}-${colorScheme}.png`;
        await page.screenshot({ path: file, fullPage: true });
        console.log(`${answer?.status()} ${route} -> ${file}`);
      }
    }
  }
}

async function everyPage(page: Page, address: string): Promise<string[]> {
  const found = await findRoutes(page, address);
  const missing = pagePatterns().filter((pattern) => !found.has(pattern));
  if (missing.length > 0) console.log(`No link led to: ${missing.join(", ")}`);
  return [...found.values()];
}

await mkdir(folder, { recursive: true });
const app = await openApp();
const browser = await chromium.launch(await launchOptions());
try {
  await picture(browser, app);
} finally {
  await browser.close();
  await app.stop();
}
