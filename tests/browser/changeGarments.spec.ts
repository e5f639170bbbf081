import { readFile } from "node:fs/promises";
import type { Page } from "@playwright/test";
import { unzipSync } from "fflate";
import { expect, test } from "./support/test";
import { goTo, savedRows } from "./wardrobe";

const TUNICS = ["WL 007", "WL 008"];

const priorities = async (page: Page): Promise<Record<string, string | undefined>> => {
  await goTo.garments(page, "?show=number,weight");
  const { rows } = await savedRows(page, "Save this list");
  return Object.fromEntries(rows.map(({ number, priority }) => [number, priority]));
};

test.describe("with scripts", () => {
  test.use({ as: "supervisor" });

  test("many garments are chosen and changed by keyboard, the files show it, and one press puts all of it back", async ({ page }) => {
    const before = await priorities(page);
    await goTo.garments(page);
    await page.getByLabel("Choose WL 007").focus();
    await page.keyboard.press("Space");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Space");
    await expect(page.getByText("2 garments chosen")).toBeVisible();
    await page.getByRole("button", { name: "Change" }).click();
    await page.getByLabel("Priority").fill("7");
    const does = page.getByRole("region", { name: "What it does", exact: true });
    await expect(does.getByRole("rowheader", { name: "Frost tunic" })).toBeVisible();
    await page.getByRole("button", { name: "Keep" }).click();
    await expect(page.getByText(/^Kept: /)).toBeVisible();

    const kept = await priorities(page);
    expect(kept).toEqual({ ...before, "WL 007": "7", "WL 008": "7" });
    const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("link", { name: "As a workbook" }).click()]);
    const files = unzipSync(await readFile(await download.path()));
    const cells = new TextDecoder().decode(files["xl/worksheets/sheet1.xml"]);
    expect(cells).toContain("<v>7</v>");

    await page.getByRole("banner").getByRole("button", { name: "Put back" }).click();
    await expect(page.getByText(/Put back: /)).toBeVisible();
    expect(await priorities(page)).toEqual(before);
  });

  test("a list is kept under a name and put away again; the list is grouped", async ({ page }) => {
    await goTo.garments(page);
    await page.getByLabel("Group by").selectOption("set");
    await expect(page).toHaveURL(/group=set/);
    await expect(page.getByRole("rowheader", { name: /Snowflake skirts/ })).toBeVisible();
    await page.getByText("Keep this view").click();
    await page.getByLabel("Name").fill("by set, for the wall");
    await page.getByRole("button", { name: "Keep", exact: true }).click();
    const view = page.getByRole("link", { name: "by set, for the wall" });
    await expect(view).toBeVisible();
    await goTo.garments(page);
    await view.click();
    await expect(page).toHaveURL(/group=set/);
    await page.getByText("Keep this view").click();
    await page.getByRole("button", { name: "Put away by set, for the wall" }).click();
    await expect(view).toHaveCount(0);
  });

  test("tickets have a square code, cautions and room to write; two go on a sheet", async ({ page }) => {
    await goTo.tickets(page, "WL 001");
    const tickets = page.getByRole("article", { name: "ticket of WL 001" });
    expect(await tickets.count()).toBeGreaterThan(1);
    await expect(tickets.first().getByRole("img", { name: "Square code of the page of WL 001" })).toBeVisible();
    await expect(tickets.first()).toContainText("keep it from flame");
    await expect(tickets.first()).toContainText("blades locked");
    await expect(tickets.first()).toContainText("Waist");
    await page.emulateMedia({ media: "print" });
    const heights = await tickets.evaluateAll((all) => all.map((one) => [one.clientHeight, one.scrollHeight]));
    for (const [height = 0, inside = 0] of heights) expect(inside).toBeLessThanOrEqual(height);
  });
});

test.describe("as a reader", () => {
  test.use({ as: "reader" });

  test("tickets show nothing of the body, and nothing can be changed", async ({ page }) => {
    await goTo.tickets(page, "WL 001");
    await expect(page.getByRole("article").first()).not.toContainText("Waist");
    await goTo.garments(page);
    await expect(page.getByRole("button", { name: "Change" })).toHaveCount(0);
  });
});

test.describe("without scripts", () => {
  test.use({ as: "supervisor", javaScriptEnabled: false });

  test("garments are chosen, looked at and sent back to the list", async ({ page }) => {
    await goTo.garments(page);
    for (const number of TUNICS) await page.getByLabel(`Choose ${number}`).check();
    await page.getByRole("button", { name: "Change" }).click();
    await page.getByLabel("Where they come from").selectOption({ label: "buy" });
    await page.getByLabel("Price of one").fill("120.00");
    await page.getByRole("button", { name: "See what it does" }).click();
    await expect(page.getByRole("region", { name: "What it does, line by line" })).toContainText(/\d+ h( \d+)?, becomes/);
    await expect(page.getByRole("button", { name: "Keep" })).toBeVisible();
  });
});
