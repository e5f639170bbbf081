import { readFile } from "node:fs/promises";
import { expect, type Locator, type Page } from "@playwright/test";
import { parse } from "csv-parse/sync";

/** The words the browser tests are written in: where one goes and what one does there. */

export const TITLE = "A Winter for Larks";
const PRODUCTION = "/productions/winter-for-larks";

export const goTo = {
  productions: (page: Page) => page.goto("/"),
  overview: (page: Page) => page.goto(PRODUCTION),
  garments: (page: Page, query = "") => page.goto(`${PRODUCTION}/garments${query}`),
  garment: (page: Page, number: string) => page.goto(`${PRODUCTION}/garments/${number.replace(" ", "-")}`),
  fittings: (page: Page) => page.goto(`${PRODUCTION}/fittings`),
  tickets: (page: Page, number: string) => page.goto(`${PRODUCTION}/tickets?number=${encodeURIComponent(number)}`),
  workroom: (page: Page) => page.goto(`${PRODUCTION}/workroom`),
  purchase: (page: Page) => page.goto(`${PRODUCTION}/purchase`),
  import: (page: Page) => page.goto("/import"),
} as const;

export const room = (page: Page, name: string): Locator => page.getByRole("navigation", { name: "Rooms" }).getByRole("link", { name });

export const heading = (page: Page, name: string | RegExp): Locator => page.getByRole("heading", { level: 1, name });

/** Levels the demonstration if it has no plan yet, or `again`; waits until the plan is shown. */
export const level = async (page: Page, again = false): Promise<void> => {
  await goTo.workroom(page);
  const said = page.locator(".say");
  if (!again && /^Levelled/.test((await said.textContent()) ?? "")) return;
  const running = page.getByRole("region", { name: "Levelling" });
  const press = page.getByRole("button", { name: /^Level/ });
  await expect(press.or(running.getByRole("button"))).toBeVisible();
  if (await press.isVisible()) await press.click();
  await expect(running).toBeVisible();
  await expect(running).toBeHidden({ timeout: 120_000 });
  await expect(said).toContainText("Levelled");
};

/** Opens a line of a table that carries its arithmetic; gives what unfolds beneath it. */
export const openLine = async (page: Page, name: string): Promise<Locator> => {
  const line = page.locator("tbody", { has: page.locator("summary", { hasText: name }) }).first();
  await line.locator("summary").first().click();
  return line.locator("tr").nth(1);
};

/** The rows of a file that a press saves. */
export const savedRows = async (page: Page, press: string): Promise<{ readonly name: string; readonly rows: Record<string, string>[] }> => {
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("link", { name: press }).click()]);
  const text = await readFile(await download.path(), "utf8");
  return { name: download.suggestedFilename(), rows: parse(text, { columns: true, bom: true }) };
};

/** The garment numbers of the list, as they stand. */
export const numbersShown = (page: Page): Promise<string[]> => page.locator("main tbody .woven").allTextContents();
