import { readdirSync } from "node:fs";
import type { Page } from "@playwright/test";

/** Every page there is, as its folder under app/: "/productions/[code]/garments". */
export function pagePatterns(): readonly string[] {
  const files = readdirSync("app", { recursive: true, encoding: "utf8" }).map((file) => file.replaceAll("\\", "/"));
  const pages = files.filter((file) => /(^|\/)page\.tsx$/.test(file) && !/(^|\/)_/.test(file));
  return pages.map((file) => `/${file.replace(/\/?page\.tsx$/, "")}`.replaceAll(/\/\([^)]*\)/g, "")).sort();
}

const asRegExp = (pattern: string): RegExp => new RegExp(`^${pattern.replaceAll(/\[[^\]]+\]/g, "[^/]+").replace(/\/$/, "")}/?$`);

/** The page file that serves an address; a fixed one is preferred to one with a bracket. */
export function patternOf(path: string, patterns: readonly string[]): string | undefined {
  const brackets = (pattern: string) => pattern.split("[").length;
  return patterns.filter((pattern) => asRegExp(pattern).test(path)).sort((a, b) => brackets(a) - brackets(b))[0];
}

const MOST_ALIKE = 5;

/** Follows links from a page until each page file has been met once. Gives one path for each file met. */
export async function findRoutes(page: Page, address: string, from = "/"): Promise<ReadonlyMap<string, string>> {
  const patterns = pagePatterns();
  const found = new Map<string, string>();
  const waiting = [from];
  const seen = new Set(waiting);
  while (waiting.length > 0 && seen.size < 400) {
    const path = waiting.shift() ?? from;
    // Sixty performers wait where one is enough.
    if (found.has(patternOf(path.split("?")[0] ?? "", patterns) ?? "")) continue;
    await page.goto(address + path);
    const landed = new URL(page.url());
    const pattern = patternOf(landed.pathname, patterns);
    if (pattern && !found.has(pattern)) found.set(pattern, landed.pathname + landed.search);
    // A link in a picture has no address of text: it is put together as the browser does.
    const links = await page
      .locator("a[href]")
      .evaluateAll((anchors) => anchors.map((anchor) => new URL(anchor.getAttribute("href") ?? "", document.baseURI).href));
    for (const link of links) {
      const { origin, pathname, search } = new URL(link);
      // A file to keep is no page, though it may stand where one has a bracket.
      const next = /\.(csv|xlsx|ics)$/.test(pathname) ? undefined : patternOf(pathname, patterns);
      if (origin !== address || !next || found.has(next) || seen.has(pathname)) continue;
      // Hundreds of garments are linked where a few are enough: one of them may lead elsewhere.
      const alike = [...seen].filter((one) => patternOf(one, patterns) === next).length;
      if (alike >= MOST_ALIKE) continue;
      seen.add(pathname);
      waiting.push(pathname + search);
    }
  }
  return found;
}
