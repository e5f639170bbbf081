import { readdir, readFile } from "node:fs/promises";
import { signIn } from "./support/signIn";
import { type App, startApp } from "./support/startApp";
import { expect, test } from "./support/test";
import { goTo, heading, TITLE } from "./wardrobe";

/** An app of its own: what is brought in changes the company's performers and their calls, which other tests level with. */
let app: App | undefined;
test.beforeAll(async () => {
  test.setTimeout(120_000);
  app = await startApp();
});
test.afterAll(() => app?.stop());

const FOLDER = "seed/small";

/** The small staging as another production of the company, with a change to one of its files. */
const files = async (change: (name: string, text: string) => string = (_name, text) => text) => {
  const names = (await readdir(FOLDER)).filter((name) => name.endsWith(".csv"));
  return Promise.all(
    names.map(async (name) => {
      const text = await readFile(`${FOLDER}/${name}`, "utf8");
      const own =
        name === "production.csv"
          ? text.replace("winter-for-larks", "second-winter").replace(TITLE, "Second Winter").replace(",WL", ",SW")
          : text;
      return { name, mimeType: "text/csv", buffer: Buffer.from(change(name, own)) };
    }),
  );
};

test("faults are shown all at once and nothing is written; mended files are previewed, then kept", async ({ browser }) => {
  const supervisor = app?.people.find((person) => person.role === "supervisor");
  if (!app || !supervisor) throw new Error("The demonstration has no supervisor.");
  const page = await browser.newPage({ baseURL: app.address });
  await signIn(page, app.address, supervisor);
  await goTo.import(page);
  const broken = await files((name, text) => (name === "pieces.csv" ? text.replaceAll(/\bbuild\b/g, "bild") : text));
  await page.getByLabel("Files of one production").setInputFiles(broken);
  await page.getByRole("button", { name: "Look at them" }).click();
  const faults = page.getByRole("region", { name: "Faults" }).locator("tbody tr");
  await expect(faults.first()).toContainText("pieces.csv");
  await expect(faults.first()).toContainText('"bild"');
  expect(await faults.count()).toBeGreaterThan(1);
  await expect(page.getByRole("button", { name: /^Keep/ })).toHaveCount(0);
  expect((await page.request.get("/productions/second-winter")).status()).toBe(404);

  const tutu = await readFile("seed/constructions/classical-tutu.json", "utf8");
  const edited = { name: "classical-tutu.json", mimeType: "application/json", buffer: Buffer.from(tutu.replace("12,", "11,")) };
  await page.getByLabel("Files of one production").setInputFiles([...(await files()), edited]);
  await page.getByRole("button", { name: "Look at them" }).click();
  await expect(faults).toHaveText([/Version 1 of classical-tutu is kept already, with other content/]);

  await page.getByLabel("Files of one production").setInputFiles(await files());
  await page.getByRole("button", { name: "Look at them" }).click();
  await expect(page.getByRole("heading", { name: "Second Winter (second-winter) is new" })).toBeVisible();
  expect((await page.request.get("/productions/second-winter")).status()).toBe(404);
  await page.getByRole("button", { name: /^Keep/ }).click();
  await expect(page).toHaveURL(/second-winter$/);
  await expect(heading(page, /working days?|Opened/)).toBeVisible();

  await goTo.import(page);
  await page.getByLabel("Files of one production").setInputFiles(await files());
  await page.getByRole("button", { name: "Look at them" }).click();
  await expect(page.getByText("is already exactly as these files say")).toBeVisible();
});
