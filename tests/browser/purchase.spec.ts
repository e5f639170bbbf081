import { expect, test } from "./support/test";
import { goTo, level, savedRows } from "./wardrobe";

test.use({ as: "supervisor" });
test.setTimeout(180_000);

const pounds = (text: string): number => Math.round(Number(text.replace(/[^\d.]/g, "")) * 100);

test("the costs of the file, of the suppliers and of the sentence are one sum", async ({ page }) => {
  await level(page);
  await goTo.purchase(page);
  const said = pounds((await page.locator(".say b").first().textContent()) ?? "");
  const bySupplier = await page.locator("tr.sum > td.num").filter({ hasText: "£" }).allTextContents();
  const { rows } = await savedRows(page, "Save for the office");
  expect(said).toBeGreaterThan(0);
  expect(bySupplier.map(pounds).reduce((sum, cost) => sum + cost, 0)).toBe(said);
  expect(rows.map((row) => pounds(row.cost ?? "")).reduce((sum, cost) => sum + cost, 0)).toBe(said);
  expect(rows.every((row) => pounds(row.price_per_pack ?? "") * Number(row.packs) === pounds(row.cost ?? ""))).toBe(true);
});

test("every line opens to the garments that need it", async ({ page }) => {
  await level(page);
  await goTo.purchase(page);
  const lines = page.locator("main tbody:has(summary)");
  const first = lines.first();
  await first.locator("summary").click();
  await expect(first.locator(".woven").first()).toBeVisible();
  await expect(first).toContainText("To buy");
});
