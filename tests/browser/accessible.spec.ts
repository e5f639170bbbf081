import { findRoutes, pagePatterns } from "./support/routes";
import { expect, expectAccessible, test } from "./support/test";
import { level } from "./wardrobe";

test.setTimeout(300_000);

/** Pages that nobody who is signed in is led to. */
const UNLINKED = [
  "/sign-in",
  "/first-supervisor",
  "/not-yours",
  "/productions/[code]/find",
  "/productions/[code]/purchase/orders/[number]",
];
const FOUND = "/productions/winter-for-larks/find?q=net";
const garment = (number: string) => `/productions/winter-for-larks/garments/${number.replace(" ", "-")}`;

for (const colorScheme of ["light", "dark"] as const)
  test.describe(colorScheme, () => {
    test.use({ as: "supervisor", colorScheme });

    test("every room is accessible, with its lines opened", async ({ page }) => {
      await level(page);
      const routes = await findRoutes(page, new URL(page.url()).origin, new URL(page.url()).pathname);
      expect(pagePatterns().filter((pattern) => !routes.has(pattern) && !UNLINKED.includes(pattern))).toEqual([]);
      for (const route of [...routes.values(), garment("WL 001"), garment("WL 008"), FOUND]) {
        await page.goto(route);
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
