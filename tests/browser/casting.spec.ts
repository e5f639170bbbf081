import type { Page } from "@playwright/test";
import { signIn } from "./support/signIn";
import { type App, startApp } from "./support/startApp";
import { expect, test } from "./support/test";

const CASTING = "/productions/winter-for-larks/casting";
const cell = (page: Page, row: string, column: number) =>
  page
    .getByRole("row", { name: new RegExp(`^${row}`) })
    .getByRole("gridcell")
    .nth(column);
const panel = (page: Page) => page.getByRole("complementary", { name: "If you keep this" });

/** Tab after tab, as somebody without a mouse goes. */
const tabTo = async (page: Page, name: string) => {
  const press = page.getByRole("button", { name, exact: true });
  await expect(press).toBeVisible();
  for (let tabs = 0; tabs < 20; tabs++) {
    await page.keyboard.press("Tab");
    if (await press.evaluate((one) => one === document.activeElement)) return;
  }
  throw new Error(`${name} is not reached by twenty tabs`);
};

test.describe("in an app of its own, since what is kept changes what others see", () => {
  let app: App | undefined;
  test.beforeAll(async () => {
    test.setTimeout(120_000);
    app = await startApp();
  });
  test.afterAll(() => app?.stop());

  test("a supervisor casts a place again by keyboard alone: sees what follows, steps back, keeps it and takes it back", async ({
    browser,
  }) => {
    const supervisor = app?.people.find((person) => person.role === "supervisor");
    if (!app || !supervisor) throw new Error("The demonstration has no supervisor.");
    const page = await browser.newPage({ baseURL: app.address });
    await signIn(page, app.address, supervisor);
    await page.goto(CASTING);
    await expect(page.getByRole("grid", { name: "Casting" })).toBeVisible();
    await expect(cell(page, "The Frost", 0)).toHaveText("Corvin Ashe");

    // One tab stop leads into the grid, on the first cell.
    await cell(page, "The Lark", 0).focus();
    await page.keyboard.press("ArrowDown");
    await expect(cell(page, "The Frost", 0)).toBeFocused();
    await page.keyboard.type("mar");
    await expect(page.getByRole("option", { name: "Teo Marrin" })).toBeVisible();
    await page.keyboard.press("Enter");

    await expect(cell(page, "The Frost", 0)).toContainText("Teo Marrin");
    await expect(cell(page, "Hazel", 0)).toBeFocused();
    await expect(panel(page)).toContainText("Teo Marrin dances The Frost in the first cast, in place of Corvin Ashe.");
    await expect(panel(page)).toContainText("not needed");

    // A second step, and back again.
    await page.keyboard.press("Delete");
    await expect(cell(page, "Hazel", 0)).toContainText("not cast");
    await page.keyboard.press("Control+z");
    await expect(cell(page, "Hazel", 0)).toHaveText("Oda Brandt");
    await expect(cell(page, "The Frost", 0)).toContainText("Teo Marrin");

    await tabTo(page, "Keep");
    await page.keyboard.press("Enter");
    await expect(panel(page)).toContainText("Kept.");
    await expect(cell(page, "The Frost", 0)).toHaveText("Teo Marrin");
    await tabTo(page, "Take it back");
    await page.keyboard.press("Enter");
    await expect(cell(page, "The Frost", 0)).toHaveText("Corvin Ashe");
    await page.close();
  });
});

test.describe("a supervisor", () => {
  test.use({ as: "supervisor" });

  test("is told of two places in one scene at once, and pastes a block", async ({ page }) => {
    await page.goto(CASTING);
    await cell(page, "Snowflakes 1", 0).focus();
    await page.evaluate(() => {
      const data = new DataTransfer();
      data.setData("text/plain", "Wren Okell\nSuri Amand\n");
      document.activeElement?.dispatchEvent(new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }));
    });
    await expect(cell(page, "Snowflakes 1", 0)).toContainText("Wren Okell");
    await expect(cell(page, "Snowflakes 1", 0)).toContainText("two places at once");
    await expect(panel(page)).toContainText("Wren Okell, first cast: Snowflakes 1 and Snowflakes 3 are both on");
    await panel(page).getByRole("button", { name: "Put back" }).click();
    await expect(cell(page, "Snowflakes 1", 0)).toContainText("Petra Lisk");
  });
});

test.describe("without scripts", () => {
  test.use({ as: "supervisor", javaScriptEnabled: false });

  test("a name leads to a form that says what follows", async ({ page }) => {
    await page.goto(CASTING);
    await page
      .getByRole("link", { name: /^Corvin Ashe/ })
      .first()
      .click();
    await page.getByLabel("Who dances it").selectOption("Teo Marrin");
    await page.getByRole("button", { name: "See what follows" }).click();
    await expect(page.getByRole("region", { name: "If you keep this" })).toContainText("Teo Marrin dances The Frost in the first cast");
    await expect(page.getByRole("button", { name: "Keep" })).toBeVisible();
  });
});

test.describe("a reader", () => {
  test.use({ as: "reader" });

  test("reads the casting as a table, and cannot change it", async ({ page }) => {
    await page.goto(CASTING);
    await expect(page.getByRole("table").first()).toContainText("Corvin Ashe");
    await expect(page.getByRole("grid")).toHaveCount(0);
    await page.goto(`${CASTING}/cell?role=frost&place=1&cast=first&standing=cast`);
    await expect(page.getByRole("heading", { level: 1, name: "Not yours to open" })).toBeVisible();
  });
});
