import { gzipSync } from "node:zlib";
import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";

export interface PageFigures {
  /** The page file that serves it: `/productions/[code]/garments`. */
  readonly pattern: string;
  /** Milliseconds to the first byte, the median of several. */
  readonly firstByte: number;
  /** KiB of scripts, compressed. */
  readonly scripts: number;
  /** Cumulative layout shift of one load. */
  readonly shift: number;
  /** Violations that axe finds, light and dark together. */
  readonly axe: number;
}

declare global {
  interface Window {
    shifts: number;
  }
}

/** From now on each page adds up how far its layout shifts. */
export const countShifts = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    window.shifts = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) {
        const { value, hadRecentInput } = entry as PerformanceEntry & { value: number; hadRecentInput: boolean };
        if (!hadRecentInput) window.shifts += value;
      }
    }).observe({ type: "layout-shift", buffered: true });
  });

/** What of a page can be measured; `countShifts` must have been called before. */
export async function pageFigures(
  page: Page,
  { pattern, address, times }: { readonly pattern: string; readonly address: string; readonly times: number },
): Promise<PageFigures> {
  const bodies: Promise<Buffer>[] = [];
  const listen = (response: Awaited<ReturnType<Page["waitForResponse"]>>) => {
    if (response.request().resourceType() === "script") bodies.push(response.body());
  };
  page.on("response", listen);
  await page.goto(address, { waitUntil: "networkidle" });
  page.off("response", listen);
  const scripts = (await Promise.all(bodies)).reduce((sum, body) => sum + gzipSync(body).length, 0) / 1024;
  const shift = await page.evaluate(() => window.shifts);
  let axe = 0;
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme });
    const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
    axe += (await new AxeBuilder({ page }).withTags(tags).analyze()).violations.length;
  }
  return { pattern, firstByte: await firstByte(page, address, times), scripts, shift, axe };
}

async function firstByte(page: Page, address: string, times: number): Promise<number> {
  const cookie = (await page.context().cookies()).map(({ name, value }) => `${name}=${value}`).join("; ");
  const taken: number[] = [];
  for (let at = 0; at < times; at++) {
    const start = performance.now();
    const response = await fetch(address, { headers: { cookie, accept: "text/html" } });
    taken.push(performance.now() - start);
    await response.arrayBuffer();
  }
  return taken.sort((a, b) => a - b)[Math.floor(times / 2)] ?? Number.NaN;
}
