import type { Page } from "@playwright/test";
import { expect, test } from "./support/test";

const PLOT = "/productions/winter-for-larks/plot";
const figures = (page: Page) => page.getByRole("region", { name: "What one of it takes" });
const net = async (page: Page) =>
  Number.parseFloat((await figures(page).getByRole("row", { name: /net/i }).first().textContent())?.replace(/^\D*/, "") ?? "");

test.use({ as: "supervisor" });

test("the plot leads by costume and piece to its parameters, whose hours and net move as one types", async ({ page }) => {
  await page.goto(PLOT);
  await expect(page.getByRole("region", { name: "Who wears what when" }).getByRole("columnheader", { name: /First snow/ })).toBeVisible();
  await page.getByRole("link", { name: "Lark, white and brown" }).first().click();
  await page.getByRole("link", { name: "Lark tutu", exact: true }).click();
  const twelve = await net(page);
  await page.getByLabel("Layers of net").fill("8");
  await expect.poll(() => net(page), { timeout: 30_000 }).toBeLessThan(twelve);
  await page.getByLabel("Layers of net").fill("99");
  await expect(figures(page)).toContainText("99 is outside 7 to 16");
});

test.describe("without scripts", () => {
  test.use({ javaScriptEnabled: false });

  test("a press works it out", async ({ page }) => {
    await page.goto(`${PLOT}/pieces/lark-tutu`);
    const twelve = await net(page);
    await page.getByLabel("Layers of net").fill("8");
    await page.getByRole("button", { name: "Work it out" }).click();
    await expect(page.getByLabel("Layers of net")).toHaveValue("8");
    expect(await net(page)).toBeLessThan(twelve);
  });
});
