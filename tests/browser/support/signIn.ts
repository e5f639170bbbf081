import type { Page } from "@playwright/test";

/** Signs in as a person does, through the form. */
export async function signIn(page: Page, origin: string, who: { email: string; password: string }): Promise<void> {
  await page.goto(`${origin}/sign-in`);
  await page.locator('input[name="email"]').fill(who.email);
  await page.locator('input[name="password"]').fill(who.password);
  await page.locator('button[type="submit"]').first().click();
  await page.waitForURL((url) => !url.pathname.startsWith("/sign-in"));
}
