import { expect, expectAccessible, test } from "./support/test";
import { goTo, heading, level, openLine, savedRows } from "./wardrobe";

test.use({ as: "supervisor" });
test.setTimeout(180_000);

test("lines of the purchase list become an order that is approved, placed, received in part, and lies on the shelf", async ({ page }) => {
  await level(page);
  await goTo.purchase(page);
  const supplier = page.getByRole("region", { name: "Harbour Nets" });
  await expect(supplier.getByRole("checkbox", { name: "Order Soft net" })).toBeChecked();
  await supplier.getByRole("checkbox", { name: "Order Stiff net" }).uncheck();
  await supplier.getByRole("button", { name: /Draft an order/ }).click();

  await expect(heading(page, /^Order \d+, Harbour Nets$/)).toBeVisible();
  const order = page.url();
  await page.getByRole("button", { name: "Approve" }).click();
  await page.getByRole("button", { name: "It is placed" }).click();
  await expect(page.locator(".say")).toContainText("on order");

  const line = await openLine(page, "Soft net");
  await line.getByLabel("Came").fill("24 1/2 yd");
  await line.getByLabel("Dye lot on the roll").fill("8812");
  await line.getByLabel("Where it lies now").fill("shelf 4");
  await line.getByRole("button", { name: "Book it in" }).click();
  await expect(page.locator(".say")).toContainText("part received");
  await expectAccessible(page);

  await page.getByRole("link", { name: "Shelf" }).click();
  await expect(heading(page, "Shelf")).toBeVisible();
  await page.locator("main").getByLabel("Find").fill("8812");
  await page.locator("main").getByRole("button", { name: "Find" }).click();
  await expect(page.locator("main tbody tr").nth(1)).toContainText("24 1/2 yd");
  await page.locator("main tbody .woven").first().click();
  await expect(heading(page, /^Soft net, lot O\d+-1a$/)).toBeVisible();
  await expect(page.getByRole("region", { name: "What happened to it" })).toContainText("came");
  await expectAccessible(page);

  // More than there is: nothing is changed, and the sentence says how much is missing.
  await page.getByLabel("How much").first().fill("30 yd");
  await page.getByRole("button", { name: "Write it down" }).click();
  await expect(page.locator("main").getByRole("alert")).toContainText("5.5 yd too little");
  await page.getByLabel("How much").first().fill("4 1/2 yd");
  await page.getByRole("button", { name: "Write it down" }).click();
  await expect(page.locator(".say")).toContainText("20 yd there");

  await page.goto(`${order}/..`);
  await expect(heading(page, "Orders")).toBeVisible();
  const { rows } = await savedRows(page, "Save for the office");
  expect(rows.find(({ name, state }) => name === "Soft net" && state === "part received")?.came).toBe("24 1/2 yd");

  // What came and what is still to come meet the need, of one dye lot: nothing is asked for twice.
  await goTo.purchase(page);
  const covered = page.getByRole("region", { name: "From the shelf" }).getByRole("row").filter({ hasText: "Soft net" });
  await expect(covered).toContainText(/lot O\d+-1a/);
  await expect(page.getByRole("region", { name: "Harbour Nets" })).not.toContainText("Soft net");
});

test("every page of cloth and buying is accessible, at a desk and on a phone", async ({ page }) => {
  await level(page);
  for (const width of [1440, 390]) {
    await page.setViewportSize({ width, height: 844 });
    for (const part of [
      "",
      "/orders",
      "/money",
      "/shelf",
      "/shelf/C-1",
      "/shelf/labels",
      "/cutting",
      "/cutting/net-soft-white",
      "/corps",
      "/dyes",
    ]) {
      const answer = await page.goto(`/productions/winter-for-larks/purchase${part}`);
      expect(answer?.status(), part).toBe(200);
      await expectAccessible(page);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
      expect(over, `${part} at ${width}`).toBeLessThanOrEqual(0);
    }
  }
});

test.describe("without scripts", () => {
  test.use({ javaScriptEnabled: false });

  test("a lot is counted, a quantity that cannot be read is told beside its field and kept", async ({ page }) => {
    await page.goto("/productions/winter-for-larks/purchase/shelf/S-1");
    const counted = page.getByLabel("Counted");
    await counted.fill("lots");
    await page.getByRole("button", { name: "This is what there is" }).click();
    await expect(page.locator("main").getByRole("alert")).toContainText("cannot be read");
    await expect(counted).toHaveValue("lots");
    await counted.fill("2 3/4 yd");
    await page.getByRole("button", { name: "This is what there is" }).click();
    await expect(page.locator(".say")).toContainText("2 3/4 yd there");
    await expect(page.getByRole("region", { name: "What happened to it" })).toContainText("counted");
  });
});

test.describe("a maker", () => {
  test.use({ as: "maker" });

  test("comes in by the shelf, and sees no price", async ({ page }) => {
    await goTo.overview(page);
    await page.getByRole("navigation", { name: "Rooms" }).getByRole("link", { name: "Cloth and buying" }).click();
    await expect(heading(page, "Shelf")).toBeVisible();
    await expect(page.getByRole("navigation", { name: "Cloth and buying" }).getByRole("link")).toHaveText([
      "Week by week",
      "Shelf",
      "Cutting plans",
      "Net of a corps",
      "Dye book",
    ]);
    expect(await page.content()).not.toContain("£");
    for (const closed of ["", "/orders", "/money"]) {
      await page.goto(`/productions/winter-for-larks/purchase${closed}`);
      await expect(heading(page, "Not yours to open")).toBeVisible();
    }
  });
});
