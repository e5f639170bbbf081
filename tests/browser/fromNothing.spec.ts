import { readdir } from "node:fs/promises";
import { startApp } from "./support/startApp";
import { expect, test } from "./support/test";
import { heading } from "./wardrobe";

const FOLDER = "seed/impossible";
/** The first day of the staging: what is ordered then comes too late. The app inherits it. */
process.env.TARLATAN_TODAY = "2027-01-11";

test("an empty start asks for the first supervisor once; what cannot be in time is named with its cause", async ({ browser }) => {
  test.setTimeout(240_000);
  const app = await startApp(["--empty"]);
  try {
    const page = await browser.newPage({ baseURL: app.address });
    await page.goto("/");
    await expect(page).toHaveURL(/first-supervisor$/);
    await page.getByLabel("The company").fill("Copper Lane Ballet");
    await page.getByLabel("Your name").fill("Wren Halloran");
    await page.getByLabel("Your e-mail").fill("wren@tarlatan.example");
    await page.getByLabel("A password").fill("short");
    await page.getByRole("button", { name: "Set up the wardrobe" }).click();
    await expect(page.getByText("Ten characters at least.")).toBeVisible();
    await expect(page.getByLabel("The company")).toHaveValue("Copper Lane Ballet");
    await page.getByLabel("A password").fill("a longer password");
    await page.getByRole("button", { name: "Set up the wardrobe" }).click();
    await expect(page.getByRole("heading", { name: "Begin with a spreadsheet" })).toBeVisible();
    await page.goto("/first-supervisor");
    await expect(page).toHaveURL(`${app.address}/`);

    await page.getByRole("link", { name: "Bring in files" }).first().click();
    const files = (await readdir(FOLDER)).filter((name) => name.endsWith(".csv")).map((name) => `${FOLDER}/${name}`);
    await page.getByLabel("Files of one production").setInputFiles(files);
    await page.getByRole("button", { name: "Look at them" }).click();
    await page.getByRole("button", { name: /^Keep/ }).click();
    await expect(page.getByRole("heading", { name: "Not levelled yet" })).toBeVisible();

    await page.getByRole("link", { name: "Go to the workroom" }).click();
    await page.getByRole("button", { name: "Level" }).click();
    await expect(page.locator(".say")).toContainText(/garments? late/, { timeout: 150_000 });
    await page.getByRole("link", { name: "Overview" }).click();
    await expect(heading(page, /working days?/)).toBeVisible();
    const late = page.getByRole("region", { name: "Late, and why" }).getByRole("listitem");
    await expect(late.first()).toContainText(/working days? after|after/);
    await expect(late.first()).toContainText("Waits");
  } finally {
    await app.stop();
  }
});
