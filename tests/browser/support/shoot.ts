/**
 * Saves a picture of any page, so that it can be looked at:
 *
 *   npm run -s shoot -- http://127.0.0.1:3000/ page.png [--width 390] [--dark] [--print] [--fold] [--as EMAIL --password P]
 *
 * Messages of the page's console and failed requests are printed. --fold keeps to the first screen; --print uses print styles;
 * --as signs in first, through the form at /sign-in. An address may also be a file: shoot -- file:///.../page.html page.png
 */
import { parseArgs } from "node:util";
import { chromium } from "@playwright/test";
import { launchOptions } from "./findBrowser";
import { signIn } from "./signIn";

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    width: { type: "string", default: "1440" },
    dark: { type: "boolean", default: false },
    print: { type: "boolean", default: false },
    fold: { type: "boolean", default: false },
    as: { type: "string" },
    password: { type: "string" },
  },
});
const [address, file] = positionals;
if (!address || !file) {
  console.error("Say which page and which file: npm run -s shoot -- http://127.0.0.1:3000/ page.png");
  process.exit(2);
}

const browser = await chromium.launch(await launchOptions());
const width = Number(values.width);
const page = await browser.newPage({ viewport: { width, height: width < 600 ? 844 : 900 }, colorScheme: values.dark ? "dark" : "light" });
page.on("console", (message) => console.log(`${message.type()}: ${message.text()}`));
page.on("requestfailed", (request) => console.log(`failed: ${request.url()}`));
page.on("pageerror", (error) => console.log(`error in the page: ${error.message}`));
if (values.as && values.password) await signIn(page, new URL(address).origin, { email: values.as, password: values.password });
if (values.print) await page.emulateMedia({ media: "print" });
const answer = await page.goto(address, { waitUntil: "networkidle" });
await page.screenshot({ path: file, fullPage: !values.fold });
console.log(`${answer?.status() ?? "no status"} ${page.url()} -> ${file}`);
await browser.close();
