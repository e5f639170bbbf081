import type { Browser, Page } from "@playwright/test";
import { signIn } from "./support/signIn";
import { type App, startApp } from "./support/startApp";
import { expect, test } from "./support/test";
import { heading, level } from "./wardrobe";

const BRYN = "/productions/winter-for-larks/people/makers/bryn";

// One app, started once, and one thing after the other in it.
test.describe.configure({ mode: "default" });

let app: App | undefined;
test.beforeAll(async () => {
  test.setTimeout(120_000);
  app = await startApp();
});
test.afterAll(() => app?.stop());

/** A page of an app of its own, since what is kept changes what others see. */
const pageOf = async (
  browser: Browser,
  role: string,
  options: { javaScriptEnabled?: boolean; viewport?: { width: number; height: number } } = {},
): Promise<Page> => {
  const person = app?.people.find((one) => one.role === role);
  if (!app || !person) throw new Error(`The demonstration has no ${role}.`);
  const page = await browser.newPage({ baseURL: app.address, ...options });
  await signIn(page, app.address, person);
  return page;
};

const share = (page: Page) => page.getByLabel(/^Share for tasks/);
const keep = (page: Page) => page.locator("main").getByRole("button", { name: "Keep", exact: true }).first();

test("two people change one maker: the second sees theirs and mine, keeps mine, and puts it back by a key", async ({ browser }) => {
  const cutter = await pageOf(browser, "cutter");
  const supervisor = await pageOf(browser, "supervisor");
  for (const page of [cutter, supervisor]) {
    await page.goto(`${BRYN}/change`);
    await expect(share(page)).toHaveValue("85%");
  }
  await share(cutter).fill("lots");
  await keep(cutter).click();
  await expect(cutter.locator("main")).toContainText('"lots" is not a share.');
  await expect(share(cutter)).toHaveValue("lots");
  await share(cutter).fill("70%");
  await keep(cutter).click();
  await expect(cutter.getByText("Kept: Maker Bryn Halloway.")).toBeVisible();

  await share(supervisor).fill("60%");
  await keep(supervisor).click();
  const both = supervisor.getByRole("region", { name: "Theirs and mine" }).getByRole("row", { name: /productive/ });
  await expect(both).toContainText("70%");
  await expect(both).toContainText("60%");
  await supervisor.getByRole("button", { name: "Keep mine" }).click();
  await expect(supervisor.getByText("Kept: Maker Bryn Halloway.")).toBeVisible();
  await expect(supervisor.locator(".say")).toContainText("60% of them for tasks");

  await supervisor.keyboard.press("Control+z");
  await expect(supervisor.locator(".say")).toContainText("70% of them for tasks");
  await expect(supervisor.locator("header").getByText("Put back: Maker Bryn Halloway.")).toBeVisible();
  await supervisor.keyboard.press("Control+Shift+z");
  await expect(supervisor.locator(".say")).toContainText("60% of them for tasks");

  await supervisor.keyboard.press("/");
  await supervisor.keyboard.type("halloway");
  await supervisor.keyboard.press("Enter");
  await expect(heading(supervisor, "Find")).toBeVisible();
  await supervisor.getByRole("searchbox", { name: /^Find a performer/ }).focus();
  await supervisor.keyboard.press("ArrowDown");
  await supervisor.keyboard.press("Enter");
  await expect(heading(supervisor, "Bryn Halloway")).toBeVisible();
});

test("without scripts the words are switched in one place, and put back from the history", async ({ browser }) => {
  const page = await pageOf(browser, "supervisor", { javaScriptEnabled: false });
  const makers = "/productions/winter-for-larks/people/makers";
  await page.goto(makers);
  await expect(page.getByRole("row", { name: /Ilka Fenn/ })).toContainText("Casual");
  await page.goto("/productions/winter-for-larks/settings");
  await page.getByLabel(/^Words/).selectOption("us");
  await keep(page).click();
  await page.goto(makers);
  await expect(page.getByRole("row", { name: /Ilka Fenn/ })).toContainText("Overhire");
  await page.goto("/productions/winter-for-larks/history");
  const entry = page.getByRole("listitem").filter({ hasText: "Settings of A Winter for Larks" }).first();
  await expect(entry).toContainText("words uk → us");
  await entry.getByRole("button", { name: "Put back" }).click();
  await expect(page.getByRole("listitem").filter({ hasText: "put back since" }).first()).toBeVisible();
  await page.goto(makers);
  await expect(page.getByRole("row", { name: /Ilka Fenn/ })).toContainText("Casual");
});

test("a stitcher's day is on the phone: a task is begun, stuck, gone on with and done", async ({ browser }) => {
  const supervisor = await pageOf(browser, "supervisor");
  await level(supervisor);
  const page = await pageOf(browser, "maker", { viewport: { width: 390, height: 844 } });
  await page.goto("/productions/winter-for-larks/people/makers");
  const busy = page.getByRole("row").filter({ hasNotText: "0 min of" }).getByRole("link").first();
  await busy.click();
  const days = page.getByRole("navigation", { name: "Week" }).getByRole("link").filter({ hasNotText: "nothing" });
  for (let weeks = 0; weeks < 5 && (await days.filter({ hasText: / h| min/ }).count()) === 0; weeks++)
    await page.getByRole("link", { name: "The week after" }).click();
  await days
    .filter({ hasText: / h| min/ })
    .first()
    .click();
  const task = page
    .locator("main ol > li")
    .filter({ has: page.getByRole("button", { name: /^Begin/ }) })
    .first();
  const press = task.getByRole("button", { name: /^Begin/ });
  expect((await press.boundingBox())?.height).toBeGreaterThanOrEqual(44);
  await press.click();
  const begun = page
    .locator("main ol > li")
    .filter({ has: page.getByRole("button", { name: "Done" }) })
    .first();
  await begun.getByText("Stuck", { exact: true }).click();
  await begun.getByLabel(/^What is in the way/).fill("no elastic");
  await begun.getByRole("button", { name: "Say so" }).click();
  await expect(page.getByText("stuck: no elastic")).toBeVisible();
  await supervisor.goto("/productions/winter-for-larks/people/makers");
  await expect(supervisor.getByRole("region", { name: "Stuck" })).toContainText("no elastic");
  await page.getByRole("button", { name: /^Go on/ }).click();
  await begun.getByLabel("Minutes worked today").fill("25");
  await begun.getByRole("button", { name: "Done" }).click();
  await expect(page.getByText("25 min worked so far")).toBeVisible();
});
