import { expect, personWith, test } from "./support/test";
import { goTo, heading } from "./wardrobe";

test("who gives a wrong password is told so, and keeps the address typed", async ({ page }) => {
  await page.goto("/sign-in");
  await page.getByLabel("Your e-mail").fill("nobody@tarlatan.example");
  await page.getByLabel("Password").fill("not the password");
  await page.getByRole("button", { name: "Come in" }).click();
  await expect(page.locator("main").getByRole("alert")).toContainText("No one comes in with this e-mail and password");
  await expect(page.getByLabel("Your e-mail")).toHaveValue("nobody@tarlatan.example");
  await expect(page.getByLabel("Password")).toHaveValue("");
});

test("after five wrong passwords an address waits", async ({ page }) => {
  await page.goto("/sign-in");
  for (const attempt of [1, 2, 3, 4, 5, 6]) {
    await page.getByLabel("Your e-mail").fill("guesser@tarlatan.example");
    await page.getByLabel("Password").fill(`guess number ${attempt}`);
    const answered = page.waitForResponse((response) => response.request().method() === "POST");
    await page.getByRole("button", { name: "Come in" }).click();
    await answered;
    await expect(page.getByRole("button", { name: "Come in" })).toBeEnabled();
  }
  await expect(page.locator("main").getByRole("alert")).toContainText(/Too many tries.*10 min/);
});

test("nobody sees a room without coming in, and signing out closes them all", async ({ page }) => {
  await goTo.garments(page);
  await expect(page).toHaveURL(/\/sign-in$/);
  const { email, password } = personWith("buyer");
  await page.getByLabel("Your e-mail").fill(email);
  await page.getByLabel("Password").fill(password);
  await page.getByRole("button", { name: "Come in" }).click();
  await expect(heading(page, "Productions")).toBeVisible();
  await page.getByRole("button", { name: "Sign out" }).click();
  await expect(page).toHaveURL(/\/sign-in$/);
  await goTo.overview(page);
  await expect(page).toHaveURL(/\/sign-in$/);
});
