import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import { keptOf, openOf, shownState } from "#lib/purchasing/order";
import type { AuthorizedCompany } from "#prisma/authorized";
import { database } from "#prisma/client";
import { approveOrder, cancelOrder, closeOrder, placeOrder, reopenOrder } from "#prisma/orders/advance";
import type { OrderDoing } from "#prisma/orders/changeOrder";
import { changeDraft, draftOrder } from "#prisma/orders/draft";
import { loadOrder, loadOrders } from "#prisma/orders/load";
import { correctLine, returnGoods } from "#prisma/orders/putRight";
import { receiveGoods } from "#prisma/orders/receive";
import { loadStaging } from "#prisma/stagings/load";
import { saveStaging } from "#prisma/stagings/save";
import { adjustLot } from "#prisma/stock/changes";
import { loadLot } from "#prisma/stock/shelf";
import { newCompany, newSupervisor } from "./support/company";
import { serveDatabase } from "./support/serve";
import { sampleStaging } from "./support/staging";

serveDatabase();

const day = (text: string) => text as PlainDate;
const TODAY = day("2027-01-18");

let company: AuthorizedCompany;
let stranger: AuthorizedCompany;
let user: string;
beforeAll(async () => {
  company = await newCompany("buyers");
  stranger = await newCompany("strangers");
  user = await newSupervisor(company, "Wren");
  await saveStaging(company, user, sampleStaging);
  await saveStaging(company, user, { ...sampleStaging, production: { ...sampleStaging.production, code: "other", prefix: "OT" } });
});

const line = {
  ...{ material: "net-54", name: "Net", colour: "ash", pack: 1000, packs: 5, pricePerPack: 8800, inspectionDays: 2 },
  ...{ oneLotSet: "reeds", neededBy: day("2027-02-20"), arithmetic: "5 × 12.5 yd", garments: ["RM 001", "RM 002"] },
};
const wish = { production: "reedmere", supplier: "Ghyll & Daughter", freight: 1500, lines: [line], today: TODAY };

let number: number;
beforeEach(async () => {
  number = (await draftOrder(company, { ...wish, user })) ?? 0;
});

const order = async () => {
  const found = await loadOrder(company, "reedmere", number);
  if (!found) throw new Error("no order");
  return found;
};
const doing = async (ofLine = false): Promise<OrderDoing> => {
  const { version, lines } = await order();
  return { production: "reedmere", number, user, detail: "done", version: ofLine ? (lines[0]?.version ?? 0) : version };
};
const place = async () => {
  await approveOrder(company, TODAY, await doing());
  const placed = await placeOrder(company, { on: TODAY, promised: new Map(), otherwise: day("2027-02-08") }, await doing());
  expect(placed.ok).toBe(true);
};
const delivered = { line: 1, on: day("2027-02-08"), quantity: 2000, dyeLot: "78", location: "shelf 1", charged: null, note: "note 4411" };
const receive = async (quantity: number) => receiveGoods(company, { ...delivered, quantity }, await doing(true));
const onOrder = async () => (await loadStaging(company, "reedmere"))?.staging.lots.find(({ code }) => code === `O${number}-1`);

describe("an order", () => {
  it("is drafted, approved, placed and received in part and whole, on the days it says", async () => {
    expect(await order()).toMatchObject({ state: "draft", supplier: "Ghyll & Daughter", draftedBy: "Wren", freight: 1500 });
    await place();
    expect(await order()).toMatchObject({ state: "placed", approvedOn: TODAY, placedOn: TODAY, approvedBy: "Wren" });
    expect((await order()).lines[0]).toMatchObject({ promised: "2027-02-08", garments: ["RM 001", "RM 002"] });
    await receive(2000);
    expect(shownState(await order())).toBe("part received");
    await receive(3000);
    expect(shownState(await order())).toBe("received");
    expect((await order()).lines[0]?.receipts.map(({ lot, quantity, dyeLot }) => [lot, quantity, dyeLot])).toEqual([
      [`O${number}-1a`, 2000, "78"],
      [`O${number}-1b`, 3000, "78"],
    ]);
    const audit = await database().auditEntry.count({ where: { companyId: company, action: "order", subject: "PurchaseOrder" } });
    expect(audit).toBeGreaterThanOrEqual(5);
  });

  it("has its own number, whoever drafts at the same time", async () => {
    const numbers = await Promise.all([1, 2, 3].map(() => draftOrder(company, { ...wish, user })));
    expect(new Set(numbers).size).toBe(3);
  });

  it("may be changed before it is approved, and not after, unless it is opened again", async () => {
    const changed = { line: 1, packs: 4, pricePerPack: 9000 };
    expect((await changeDraft(company, changed, await doing(true))).ok).toBe(true);
    await approveOrder(company, TODAY, await doing());
    expect(await changeDraft(company, changed, await doing(true))).toEqual({ ok: false, error: { kind: "state", state: "approved" } });
    await reopenOrder(company, await doing());
    expect((await order()).approvedOn).toBeNull();
    expect((await order()).lines[0]).toMatchObject({ packs: 4, pricePerPack: 9000 });
  });

  it("is not placed before it is approved", async () => {
    const placed = await placeOrder(company, { on: TODAY, promised: new Map(), otherwise: TODAY }, await doing());
    expect(placed).toEqual({ ok: false, error: { kind: "state", state: "draft" } });
  });

  it("is approved once, by two at once", async () => {
    const seen = await doing();
    const outcomes = await Promise.all([approveOrder(company, TODAY, seen), approveOrder(company, TODAY, seen)]);
    expect(outcomes.map(({ ok }) => ok).sort()).toEqual([false, true]);
  });
});

describe("goods on order", () => {
  it("are what the plan counts on, on the day the supplier promises, and make it stale", async () => {
    const before = await loadStaging(company, "reedmere");
    expect(await onOrder()).toBeUndefined();
    await place();
    expect(await onOrder()).toMatchObject({ material: "net-54", quantity: 5000, arrives: "2027-02-08" });
    expect((await loadStaging(company, "reedmere"))?.inputRevision).toBeGreaterThan(before?.inputRevision ?? 0);
  });

  it("follow a correction: a slip moves the day, fewer packs are less", async () => {
    await place();
    const terms = { packs: 4, pricePerPack: 9000, promised: day("2027-02-15") };
    const corrected = await correctLine(company, { line: 1, on: TODAY, terms, why: "A week late, and one bolt less." }, await doing(true));
    expect(corrected.ok).toBe(true);
    expect(await onOrder()).toMatchObject({ quantity: 4000, arrives: "2027-02-15" });
    expect((await order()).lines[0]?.corrections).toEqual([
      {
        day: TODAY,
        before: { packs: 5, pricePerPack: 8800, promised: "2027-02-08" },
        after: { packs: 4, pricePerPack: 9000, promised: "2027-02-15" },
        why: "A week late, and one bolt less.",
      },
    ]);
  });

  it("are less by what came, and gone when all came, more came, or the order ended", async () => {
    await place();
    await receive(2000);
    expect(await onOrder()).toMatchObject({ quantity: 3000, dyeLot: "78" });
    await receive(3100);
    expect(await onOrder()).toBeUndefined();
    number = (await draftOrder(company, { ...wish, user })) ?? 0;
    await place();
    expect((await cancelOrder(company, TODAY, await doing())).ok).toBe(true);
    expect(await onOrder()).toBeUndefined();
  });

  it("stay awaited when a staging is brought in again whose files do not know them", async () => {
    await place();
    await saveStaging(company, user, sampleStaging);
    expect(await onOrder()).toMatchObject({ quantity: 5000 });
  });
});

describe("goods that came", () => {
  it("are a lot on the shelf, with the movement that brought them", async () => {
    await place();
    const came = await receive(2000);
    expect(came).toEqual({ ok: true, value: { lot: `O${number}-1a` } });
    const seen = await loadLot(company, `O${number}-1a`);
    expect(seen?.lot).toMatchObject({
      arrives: null,
      location: "shelf 1",
      order: { number, production: "reedmere" },
      balance: { onHand: 2000 },
    });
    expect(seen?.movements).toMatchObject([
      { kind: "received", quantity: 2000, left: 2000, reason: `Order ${number}. note 4411`, who: "Wren" },
    ]);
  });

  it("are booked in once, by two at once", async () => {
    await place();
    const seen = await doing(true);
    const outcomes = await Promise.all([1, 2].map(() => receiveGoods(company, delivered, seen)));
    expect(outcomes.map(({ ok }) => ok).sort()).toEqual([false, true]);
    expect(outcomes.find(({ ok }) => !ok)).toEqual({ ok: false, error: { kind: "changed" } });
    expect((await order()).lines[0]?.receipts.length).toBe(1);
  });

  it("go back from the lot they came as, never more than came or than is there", async () => {
    await place();
    await receive(2000);
    const sent = { line: 1, lot: `O${number}-1a`, on: TODAY, quantity: 500, credit: 4400, why: "A fault every yard." };
    expect((await returnGoods(company, sent, await doing(true))).ok).toBe(true);
    const kept = (await order()).lines[0];
    expect(kept && [keptOf(kept), openOf(kept)]).toEqual([1500, 3000]);
    const tooMuch = await returnGoods(company, { ...sent, quantity: 1501 }, await doing(true));
    expect(tooMuch).toMatchObject({ ok: false, error: { kind: "refused", refusal: { short: 1 } } });
    await adjustLot(company, { lot: sent.lot, by: 1000, reason: "Found." }, { user, detail: "x", production: null });
    expect(await returnGoods(company, { ...sent, quantity: 1501 }, await doing(true))).toMatchObject({ ok: false });
    expect(await returnGoods(company, { ...sent, lot: "L1" }, await doing(true))).toEqual({
      ok: false,
      error: { kind: "no lot", lot: "L1" },
    });
  });

  it("keep their order from being cancelled; it is closed instead", async () => {
    await place();
    await receive(2000);
    expect(await cancelOrder(company, TODAY, await doing())).toEqual({ ok: false, error: { kind: "state", state: "placed" } });
    expect((await closeOrder(company, TODAY, await doing())).ok).toBe(true);
    expect(shownState(await order())).toBe("closed");
    expect(await onOrder()).toBeUndefined();
    expect(await receive(1)).toEqual({ ok: false, error: { kind: "state", state: "closed" } });
  });
});

describe("another production, another company", () => {
  it("has none of these orders and changes nothing of them", async () => {
    expect(await loadOrder(company, "other", number)).toBeNull();
    expect(await loadOrders(stranger, "reedmere")).toEqual([]);
    const seen = await doing();
    expect(await approveOrder(company, TODAY, { ...seen, production: "other" })).toEqual({ ok: false, error: { kind: "no order" } });
    expect(await approveOrder(stranger, TODAY, { ...seen, user: null })).toEqual({ ok: false, error: { kind: "no order" } });
    expect(await draftOrder(stranger, { ...wish, user: null })).toBeNull();
  });
});
