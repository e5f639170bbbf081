import { readdir, readFile } from "node:fs/promises";
import type { Page } from "@playwright/test";
import { type App, startApp } from "./support/startApp";
import { expect, test } from "./support/test";
import { goTo, heading, room, savedRows } from "./wardrobe";

/** An app of its own, empty at first: a new user's. */
let app: App | undefined;
let page: Page;
test.describe.configure({ mode: "serial" });
test.beforeAll(async ({ browser }) => {
  test.setTimeout(180_000);
  app = await startApp(["--empty"]);
  page = await browser.newPage({ baseURL: app.address, acceptDownloads: true });
});
test.afterAll(() => app?.stop());

const FOLDER = "seed/small";
const files = async (change: (name: string, text: string) => string) => {
  const names = (await readdir(FOLDER)).filter((name) => name.endsWith(".csv"));
  return Promise.all(
    names.map(async (name) => ({
      name,
      mimeType: "text/csv",
      buffer: Buffer.from(change(name, await readFile(`${FOLDER}/${name}`, "utf8"))),
    })),
  );
};

const levelled = () => expect(page.locator(".say")).toContainText(/^Levelled/, { timeout: 150_000 });

/** Tab after tab to a press or a link, as somebody without a mouse goes; then Enter. */
const pressByKeys = async (name: string | RegExp) => {
  const wanted = page.getByRole("button", { name }).or(page.getByRole("link", { name })).first();
  await expect(wanted).toBeVisible();
  for (let tabs = 0; tabs < 80; tabs++) {
    await page.keyboard.press("Tab");
    if (await wanted.evaluate((one) => one === document.activeElement)) return page.keyboard.press("Enter");
  }
  throw new Error(`${name} is not reached by eighty tabs`);
};

test("a new user sets the company up, brings the staging in, mends its fault, and levels it", async () => {
  test.setTimeout(240_000);
  await page.goto("/");
  await page.getByLabel("The company").fill("Copper Lane Ballet");
  await page.getByLabel("Your name").fill("Wren Halloran");
  await page.getByLabel("Your e-mail").fill("wren@tarlatan.example");
  await page.getByLabel("A password").fill("a longer password");
  await page.getByRole("button", { name: "Set up the wardrobe" }).click();
  await page.getByRole("link", { name: "Bring in files" }).first().click();

  await page
    .getByLabel("Files of one production")
    .setInputFiles(await files((name, text) => (name === "casting.csv" ? text.replace("corvin", "corvinn") : text)));
  await page.getByRole("button", { name: "Look at them" }).click();
  const faults = page.getByRole("region", { name: "Faults" });
  await expect(faults).toContainText("casting.csv");
  await expect(faults).toContainText("corvinn");
  await page.getByLabel("Files of one production").setInputFiles(await files((_name, text) => text));
  await page.getByRole("button", { name: "Look at them" }).click();
  await page.getByRole("button", { name: /^Keep/ }).click();
  await expect(page.getByRole("heading", { name: "Not levelled yet" })).toBeVisible();

  await page.getByRole("link", { name: "Go to the workroom" }).click();
  await page.getByRole("button", { name: "Level" }).click();
  await levelled();
});

test("by keyboard alone: a place is cast again, the workroom levelled again, the purchase list saved", async () => {
  test.setTimeout(240_000);
  await goTo.overview(page);
  await pressByKeys("Casting");
  await expect(page.getByRole("grid", { name: "Casting" })).toBeVisible();
  const frost = page
    .getByRole("row", { name: /^The Frost/ })
    .getByRole("gridcell")
    .first();
  await expect(frost).toHaveText("Corvin Ashe");
  const inGrid = () => page.evaluate(() => document.activeElement?.closest("[role=grid]") !== null);
  for (let tabs = 0; tabs < 60 && !(await inGrid()); tabs++) await page.keyboard.press("Tab");
  await page.keyboard.press("ArrowDown");
  await expect(frost).toBeFocused();
  await page.keyboard.type("mar");
  await expect(page.getByRole("option", { name: "Teo Marrin" })).toBeVisible();
  await page.keyboard.press("Enter");
  await expect(frost).toContainText("Teo Marrin");
  await pressByKeys("Keep");
  await expect(page.getByRole("complementary", { name: "If you keep this" })).toContainText("Kept.");

  await page.goto(`${new URL(page.url()).pathname.replace(/casting$/, "workroom")}`);
  await expect(page.locator(".say")).toContainText("level again");
  await pressByKeys("Level again");
  await expect(page.locator(".say")).not.toContainText("level again", { timeout: 150_000 });
  await levelled();

  await pressByKeys("Cloth and buying");
  const [saved] = await Promise.all([page.waitForEvent("download"), pressByKeys("Save for the office")]);
  expect(saved.suggestedFilename()).toMatch(/\.csv$/);
  expect(await readFile(await saved.path(), "utf8")).toContain("Stiff net");
});

test("work is fixed by hand, tickets are printed, and the purchase list is saved as it is seen", async () => {
  test.setTimeout(120_000);
  await goTo.workroom(page);
  await page.getByText("The same as a list").click();
  await page
    .getByRole("table")
    .getByRole("link", { name: /^Move / })
    .first()
    .click();
  await expect(heading(page, "Move work")).toBeVisible();
  await page.getByRole("button", { name: "See what follows" }).click();
  await expect(page.getByRole("region", { name: "What follows" })).toContainText("Nothing else moves.", { timeout: 30_000 });
  await page.getByRole("button", { name: "Keep it there" }).click();
  await expect(heading(page, "Workroom")).toBeVisible();
  await expect(page.getByRole("link", { name: /fixed by hand/ })).toHaveCount(1);

  await page.goto("/productions/winter-for-larks/tickets?number=WL+001");
  await expect(page.getByRole("heading", { name: /WL 001|Lark tutu/ }).first()).toBeVisible();
  const paper = await page.pdf({ format: "A4" });
  expect(paper.subarray(0, 5).toString()).toBe("%PDF-");

  await room(page, "Cloth and buying").click();
  const { name, rows } = await savedRows(page, "Save for the office");
  expect(name).toMatch(/\.csv$/);
  expect(rows.length).toBeGreaterThan(3);
});
