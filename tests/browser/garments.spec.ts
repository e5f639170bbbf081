import { expect, test } from "./support/test";
import { goTo, numbersShown, savedRows } from "./wardrobe";

test.use({ as: "supervisor" });

test("the list is searched and sorted by keyboard alone, and the file saved is the list seen", async ({ page }) => {
  await goTo.garments(page);
  expect(await numbersShown(page)).toHaveLength(12);

  await page.getByLabel("Find", { exact: true }).focus();
  await page.keyboard.type("snowflake");
  await expect(page.getByRole("status").filter({ hasText: "of 12" })).toHaveText("3 of 12");

  for (
    let tabs = 0;
    tabs < 30 && !(await page.getByRole("button", { name: "Work" }).evaluate((press) => press === document.activeElement));
    tabs++
  )
    await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  const header = page.getByRole("columnheader", { name: "Work" });
  await expect(header).toHaveAttribute("aria-sort", "ascending");
  const rising = await numbersShown(page);
  await page.keyboard.press("Enter");
  await expect(header).toHaveAttribute("aria-sort", "descending");
  expect(await numbersShown(page)).toEqual(rising.toReversed());

  const saved = await savedRows(page, "Save this list");
  expect(saved.rows.map((row) => row.number)).toEqual(rising.toReversed());

  await page.reload();
  expect(await numbersShown(page)).toEqual(rising.toReversed());
  await expect(page.getByLabel("Find", { exact: true })).toHaveValue("snowflake");
});

test("a search that finds nothing says so", async ({ page }) => {
  await goTo.garments(page);
  await page.getByLabel("Find", { exact: true }).fill("submarine");
  await expect(page.getByText("No garment answers to that.")).toBeVisible();
});
