import type { Page } from "@playwright/test";
import { expect, test } from "./support/test";

const PERFORMER = "/productions/winter-for-larks/people/performers/ines";
/** Ines Varro's bust and inside leg, in either unit: the one is cut by, nothing of hers is cut by the other. */
const BUST = /86 cm|33 7\/8 in/;
const SHEETS = /\d cm|\d in\b/;
const sent = async (page: Page) => `${await page.content()}`;

for (const role of ["reader", "buyer"])
  test.describe(`a ${role}`, () => {
    test.use({ as: role });

    test("finds no measurement of a performer, neither on the page nor in what is sent with it", async ({ page }) => {
      await page.goto(PERFORMER);
      await expect(page.getByRole("heading", { level: 1, name: "Ines Varro" })).toBeVisible();
      await expect(page.getByText("Measurements are shown to those who cut, make and fit.")).toBeVisible();
      expect(await sent(page)).not.toMatch(BUST);
      await expect(page.getByRole("region", { name: "Measurements" })).toHaveCount(0);
      await page.goto("/productions/winter-for-larks/people/performers");
      await expect(page.getByRole("columnheader", { name: "Newest sheet" })).toHaveCount(0);
      await page.goto(`${PERFORMER}/sheet`);
      await expect(page.getByRole("heading", { level: 1, name: "Not yours to open" })).toBeVisible();
    });
  });

test.describe("a maker", () => {
  test.use({ as: "maker" });

  test("sees what the garments are cut by, from the newest sheet, and nothing else", async ({ page }) => {
    await page.goto(PERFORMER);
    const table = page.getByRole("region", { name: "Measurements" });
    await expect(table.getByRole("row", { name: /Waist, where the body bends/ })).toBeVisible();
    await expect(table.getByRole("row", { name: /Inside leg/ })).toHaveCount(0);
    expect(await table.getByRole("columnheader").count()).toBe(4);
  });
});

test.describe("a supervisor", () => {
  test.use({ as: "supervisor" });

  test("sees sheets whole, in the units chosen", async ({ page }) => {
    await page.goto(PERFORMER);
    const row = page.getByRole("row", { name: /Inside leg/ });
    await expect(row).toContainText(SHEETS);
    await page.getByRole("navigation", { name: "Units" }).getByRole("link").click();
    await expect(page).toHaveURL(/units=(in|cm)/);
    await expect(row).toContainText(SHEETS);
  });

  test("is told of each cell of a pasted row that cannot be read", async ({ page }) => {
    await page.goto(`${PERFORMER}/sheet`);
    await page.getByText("Paste a row from a spreadsheet").click();
    const paste = page.getByLabel(/Headings and one row/);
    await paste.fill("taken\twaist\thip\n2027-01-09\ttwenty\t92 cm");
    await page.getByRole("button", { name: "Read it into the form" }).click();
    await expect(page.getByRole("region", { name: "Faults" })).toContainText("twenty");
    await paste.fill("taken\twaist\thip\n2027-01-09\t25 1/4 in\t92 cm");
    await page.getByRole("button", { name: "Read it into the form" }).click();
    await expect(page.getByRole("textbox", { name: /Waist, where the body bends/ })).toHaveValue("25 1/4 in");
  });
});
