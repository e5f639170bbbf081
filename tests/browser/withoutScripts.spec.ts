import { expect, personWith, test } from "./support/test";
import { goTo, heading, numbersShown } from "./wardrobe";

test.use({ javaScriptEnabled: false });

test("without scripts one comes in, searches and sorts the garments, and is told of faults in a file", async ({ page }) => {
  const { email, password } = personWith("supervisor");
  await page.goto("/sign-in");
  await page.getByLabel("Your e-mail").fill(email);
  await page.getByLabel("Password").fill("wrong");
  await page.getByRole("button", { name: "Come in" }).click();
  await expect(page.locator("main").getByRole("alert")).toContainText("No one comes in");
  await expect(page.getByLabel("Your e-mail")).toHaveValue(email);
  await page.getByLabel("Password").fill(password);
  await page.getByRole("button", { name: "Come in" }).click();
  await expect(heading(page, "Productions")).toBeVisible();

  await goTo.garments(page);
  await page.getByLabel("Find", { exact: true }).fill("tunic");
  await page.locator("main").getByRole("button", { name: "Find" }).click();
  expect(await numbersShown(page)).toEqual(["WL 007", "WL 008"]);
  await page.getByRole("button", { name: "Number" }).click();
  expect(await numbersShown(page)).toEqual(["WL 008", "WL 007"]);

  await goTo.import(page);
  await page.getByLabel("Files of one production").setInputFiles({
    name: "pieces.csv",
    mimeType: "text/csv",
    buffer: Buffer.from("code,nonsense\nA,B\n"),
  });
  await page.getByRole("button", { name: "Look at them" }).click();
  await expect(page.getByRole("region", { name: "Faults" })).toContainText("pieces.csv");
});
