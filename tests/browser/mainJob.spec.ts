import { expect, test } from "./support/test";
import { goTo, heading, level, openLine, room, TITLE } from "./wardrobe";

test.use({ as: "supervisor" });

test("a supervisor levels the workroom, sees that all is in time and what is behind each figure", async ({ page }) => {
  test.setTimeout(180_000);
  await goTo.productions(page);
  await page.getByRole("link", { name: TITLE }).click();
  await expect(heading(page, /^\d+ working days?$/)).toBeVisible();

  await level(page, true);
  await expect(page.locator(".say")).toContainText("Nothing late");
  await expect(page.getByRole("group", { name: /The workroom's plan: 6 makers/ })).toBeVisible();

  await room(page, "Overview").click();
  await expect(page.locator(".say")).toContainText("No garment comes late.");
  await page.getByText("The same in figures").click();
  const sums = await page
    .getByRole("region", { name: "Hours needed and free, in figures" })
    .getByRole("row")
    .filter({ has: page.getByRole("rowheader") })
    .evaluateAll((rows) => rows.map((row) => Number([...row.children].at(-3)?.textContent?.replace(/\D/g, ""))));
  const workroom = sums.at(-1) ?? 0;
  expect(Math.abs(sums.slice(0, -1).reduce((sum, hours) => sum + hours, 0) - workroom)).toBeLessThanOrEqual(sums.length / 2);

  await room(page, "Garments").click();
  await page.getByRole("link", { name: "WL 001" }).click();
  await expect(heading(page, "Lark tutu")).toBeVisible();
  await expect(page.getByRole("heading", { name: "Section" })).toBeVisible();
  await expect(await openLine(page, "Mount the layers")).toContainText("Waits for");
  await expect(await openLine(page, "Net for the layers")).toBeVisible();
});

test("each garment's tasks have a maker and a time once levelled", async ({ page }) => {
  test.setTimeout(180_000);
  await level(page);
  await goTo.garment(page, "WL 006");
  const tasks = page.getByRole("region", { name: "Tasks in order" }).locator("tbody > tr:first-child");
  expect(await tasks.count()).toBeGreaterThanOrEqual(8);
  for (const task of await tasks.all()) await expect(task.locator("td").last()).toContainText(/\d\d:\d\d to /);
});
