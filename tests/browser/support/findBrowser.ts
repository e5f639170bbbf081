import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { chromium } from "@playwright/test";
import { type Browser, shippedChromium } from "./shippedChromium";

const names = [
  "chromium",
  "chromium-browser",
  "google-chrome-stable",
  "google-chrome",
  "microsoft-edge",
  "msedge",
  "chrome.exe",
  "msedge.exe",
];

const usual = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
];

/** Flags that keep a test browser from talking to anybody but the page under test. */
export const quietFlags = [
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--disable-gpu",
  "--disable-dev-shm-usage",
];

/**
 * A browser to test with: the one named by BROWSER_PATH, Playwright's own download, an installed Chrome, Chromium or Edge,
 * the one that a package of the project carries.
 * @throws Error that says what to install when there is none.
 */
export async function findBrowser(): Promise<Browser> {
  const named = process.env.BROWSER_PATH;
  if (named && !existsSync(named)) throw new Error(`BROWSER_PATH names ${named}, and there is no such file.`);
  const path = named || [chromium.executablePath(), ...onPath(), ...usual].find((candidate) => candidate && existsSync(candidate));
  const found = path ? { executablePath: path, env: {} } : await shippedChromium();
  if (found) return found;
  throw new Error("No browser was found. Install Chrome, Chromium or Edge, or run `npx playwright install chromium`, or set BROWSER_PATH.");
}

/** Options for Playwright's `launch`. It passes --no-sandbox by itself, which root needs. */
export async function launchOptions(): Promise<{ executablePath: string; args: string[]; env: Record<string, string> }> {
  const { executablePath, env } = await findBrowser();
  const inherited = Object.entries(process.env).filter((entry): entry is [string, string] => entry[1] !== undefined);
  return { executablePath, args: quietFlags, env: { ...Object.fromEntries(inherited), ...env } };
}

function onPath(): string[] {
  const folders = (process.env.PATH ?? "").split(delimiter).filter(Boolean);
  return folders.flatMap((folder) => names.map((name) => join(folder, name)));
}
