import { expect, test } from "./support/test";
import { goTo, heading, room } from "./wardrobe";

test.describe("a reader", () => {
  test.use({ as: "reader" });

  test("sees garments but no measurements, prices or import", async ({ page }) => {
    await goTo.garment(page, "WL 008");
    await expect(page.getByRole("heading", { name: "Wearers" })).toBeVisible();
    await expect(page.getByText("measured")).toHaveCount(0);
    await expect(page.getByRole("heading", { name: "Notes" })).toHaveCount(0);
    await expect(room(page, "Cloth and buying")).toHaveCount(0);
    for (const closed of [goTo.purchase, goTo.import]) {
      await closed(page);
      await expect(heading(page, "Not yours to open")).toBeVisible();
    }
  });

  test("cannot fetch the prices as a file", async ({ page }) => {
    const answer = await page.request.get("/productions/winter-for-larks/purchase.csv");
    expect(answer.headers()["content-type"]).not.toContain("text/csv");
  });
});

test.describe("a supervisor", () => {
  test.use({ as: "supervisor" });

  test("finds no production that is not the company's, and no garment that is not the production's", async ({ page }) => {
    for (const nowhere of ["/productions/another-house", "/productions/winter-for-larks/garments/WL-999", "/nowhere"]) {
      const answer = await page.goto(nowhere);
      expect(answer?.status(), nowhere).toBe(404);
      await expect(heading(page, /^Not /)).toBeVisible();
    }
  });
});
