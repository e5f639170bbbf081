import type { Page } from "@playwright/test";
import { expect, test } from "./support/test";
import { goTo, heading, room } from "./wardrobe";

const BODY = ["Waist", "Hip", "Closing at the back", "Piping"];
/** A note on a body: a measurement that is missing from the newest sheet. */
const OF_A_BODY = /newest sheet/;
const figure = (page: Page, name: string) => page.getByRole("region", { name: "How it is made" }).getByText(name, { exact: true });

test.describe("a reader", () => {
  test.use({ as: "reader" });

  test("sees garments but no measurements, prices or import", async ({ page }) => {
    await goTo.garment(page, "WL 008");
    await expect(page.getByRole("heading", { name: "Wearers" })).toBeVisible();
    await expect(page.getByText("measured")).toHaveCount(0);
    await expect(page.getByRole("heading", { name: "Notes" })).toBeVisible();
    await expect(page.getByText(OF_A_BODY)).toHaveCount(0);
    await expect(room(page, "Cloth and buying")).toHaveCount(0);
    for (const closed of [goTo.purchase, goTo.import]) {
      await closed(page);
      await expect(heading(page, "Not yours to open")).toBeVisible();
    }
  });

  test("finds no figure that is counted from a body, neither on the page nor in what is sent with it", async ({ page }) => {
    await goTo.garment(page, "WL 001");
    await expect(figure(page, "Layers of net")).toBeVisible();
    await expect(page.getByText("shown to those who cut, make and fit").first()).toBeAttached();
    await expect(page.getByRole("heading", { name: "Section" })).toHaveCount(0);
    for (const counted of BODY) await expect(figure(page, counted)).toHaveCount(0);
    expect(await page.content()).not.toMatch(/body\.[a-z]|waistLine|hipLine/i);
  });

  test("cannot fetch the prices as a file", async ({ page }) => {
    const answer = await page.request.get("/productions/winter-for-larks/purchase.csv");
    expect(answer.headers()["content-type"]).not.toContain("text/csv");
  });
});

test.describe("a supervisor", () => {
  test.use({ as: "supervisor" });

  test("sees what a reader does not", async ({ page }) => {
    await goTo.garment(page, "WL 001");
    await expect(page.getByRole("heading", { name: "Section" })).toBeVisible();
    for (const counted of BODY) await expect(figure(page, counted)).toBeVisible();
    expect(await page.content()).toMatch(/body\.waist/);
    await goTo.garment(page, "WL 008");
    await expect(page.getByText(OF_A_BODY).first()).toBeVisible();
  });

  test("finds no production that is not the company's, and no garment that is not the production's", async ({ page }) => {
    for (const nowhere of ["/productions/another-house", "/productions/winter-for-larks/garments/WL-999", "/nowhere"]) {
      const answer = await page.goto(nowhere);
      expect(answer?.status(), nowhere).toBe(404);
      await expect(heading(page, /^Not /)).toBeVisible();
    }
  });
});
