import { readFile } from "node:fs/promises";
import ICAL from "ical.js";
import { expect, test } from "./support/test";
import { goTo, heading, level } from "./wardrobe";

test.setTimeout(180_000);

test.describe("at the table", () => {
  test.use({ as: "supervisor" });

  test("fittings are seen by day, saved for a calendar, and printed as call sheets", async ({ page }) => {
    await level(page);
    await goTo.fittings(page);
    await expect(heading(page, "Fittings")).toBeVisible();
    await expect(page.getByRole("region", { name: /^Fittings of / }).first()).toBeVisible();
    const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("link", { name: "For a calendar" }).click()]);
    const calendar = new ICAL.Component(ICAL.parse(await readFile(await download.path(), "utf8")));
    expect(calendar.getAllSubcomponents("vevent").length).toBeGreaterThan(10);
    await page.getByRole("link", { name: "Call sheets" }).click();
    await expect(page.getByRole("article", { name: /^Fitting calls of / }).first()).toContainText("Noted at the door");
  });
});

test.describe("on a phone", () => {
  test.use({ as: "maker", viewport: { width: 390, height: 844 } });

  test("a fitter notes an alteration, which becomes a task, takes it back, and says how it went", async ({ page }) => {
    await level(page);
    await goTo.fittings(page);
    const first = page
      .getByRole("region", { name: /^Fittings of / })
      .first()
      .getByRole("link")
      .first();
    await first.click();
    await expect(page.getByRole("heading", { name: "How it went" })).toBeVisible();

    await page.getByRole("img", { name: /^Back/ }).click({ position: { x: 70, y: 40 } });
    await page.getByLabel("Where").selectOption({ label: "Left shoulder or strap" });
    const words = `up three eighths ${Date.now()}`;
    await page.getByLabel("In words").first().fill(words);
    await page.getByRole("button", { name: "Note it" }).click();
    await expect(page.getByText(`Kept: Fitting of`)).toBeVisible();
    const note = page.getByRole("listitem").filter({ hasText: words });
    await expect(note).toContainText("hand finish, 30 min");
    await page.locator("main").getByRole("button", { name: "Put back" }).click();
    await expect(note).toContainText("the work was taken back");

    for (const press of await page.locator("main").getByRole("button").all()) {
      const box = await press.boundingBox();
      if (box && (await press.getAttribute("class"))?.includes("press")) expect(box.height).toBeGreaterThanOrEqual(44);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);

    await page.getByRole("checkbox", { name: /Fit/ }).check();
    await page.getByRole("button", { name: "Done" }).click();
    await expect(page.getByRole("listitem").filter({ hasText: "signed off: fit" })).toBeVisible();
  });
});
