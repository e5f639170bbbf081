import { expectAccessible, test } from "./support/test";
import { goTo, level } from "./wardrobe";

test.setTimeout(180_000);

for (const colorScheme of ["light", "dark"] as const)
  test.describe(colorScheme, () => {
    test.use({ as: "supervisor", colorScheme });

    test("every room is accessible, with its lines opened", async ({ page }) => {
      await level(page);
      const rooms = [goTo.productions, goTo.overview, goTo.garments, goTo.workroom, goTo.purchase, goTo.import];
      for (const go of [...rooms, ...["WL 001", "WL 008"].map((number) => (to: typeof page) => goTo.garment(to, number))]) {
        await go(page);
        for (const line of (await page.locator("main summary").all()).slice(0, 4)) await line.click();
        await expectAccessible(page);
      }
      await page.goto("/not-yours");
      await expectAccessible(page);
    });
  });

test("the door is accessible, and what it says of a wrong password", async ({ page }) => {
  await page.goto("/sign-in");
  await expectAccessible(page);
  await page.getByLabel("Your e-mail").fill("stranger@tarlatan.example");
  await page.getByLabel("Password").fill("a wrong one");
  await page.getByRole("button", { name: "Come in" }).click();
  await page.locator("main").getByRole("alert").waitFor();
  await expectAccessible(page);
});
