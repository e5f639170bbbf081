import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import type { AuthorizedCompany } from "#prisma/authorized";
import { database } from "#prisma/client";
import { loadStaging } from "#prisma/stagings/load";
import { saveStaging } from "#prisma/stagings/save";
import { bookInLot } from "#prisma/stock/bookInLot";
import type { Doing } from "#prisma/stock/changeLot";
import { adjustLot, countLot, cutLot, moveLot, partOff } from "#prisma/stock/changes";
import { releaseReservation, reserveLot } from "#prisma/stock/reserve";
import { loadLot, loadReservations, loadShelf } from "#prisma/stock/shelf";
import { newCompany, newSupervisor } from "./support/company";
import { serveDatabase } from "./support/serve";
import { sampleStaging } from "./support/staging";

serveDatabase();

let company: AuthorizedCompany;
let stranger: AuthorizedCompany;
let doing: Doing & { production: string };
beforeAll(async () => {
  company = await newCompany("shelf");
  stranger = await newCompany("strangers");
  doing = { user: await newSupervisor(company, "Wren"), detail: "L1", production: "reedmere" };
  await saveStaging(company, doing.user, sampleStaging);
});

/** 900 of a lot of its own for every test. */
let lot: string;
let made = 0;
beforeEach(async () => {
  lot = `T${++made}`;
  const { id: materialId } = await database().material.findFirstOrThrow({ where: { companyId: company, code: "net-54" } });
  await database().lot.create({ data: { companyId: company, materialId, code: lot, dyeLot: "77", location: "shelf 3", quantity: 900 } });
});

const cut = (quantity: number, reservation: string | null = null) =>
  cutLot(company, { lot, kind: "cut", quantity, garments: ["RM 001"], reservation, reason: "" }, doing);
const reserve = (quantity: number) => reserveLot(company, { lot, set: "reeds", garments: [], quantity, reason: "" }, doing);
const entry = async () => (await loadLot(company, lot))?.lot;
/** Sum of the movements of every lot on the shelf that holds something else. */
const amiss = () =>
  database().$queryRaw`select lot.code from lot left join movement on movement.lot_id = lot.id
    where lot.arrives is null group by lot.id having lot.quantity <> coalesce(sum(movement.quantity), 0) and count(movement) > 0`;

describe("what a lot holds", () => {
  it("never goes below nothing, with two buyers at once", async () => {
    const outcomes = await Promise.all([cut(600), cut(600)]);
    expect(outcomes.map(({ ok }) => ok).sort()).toEqual([false, true]);
    expect(outcomes.find(({ ok }) => !ok)).toMatchObject({ error: { kind: "refused", refusal: { kind: "too little", short: 300 } } });
    expect(await entry()).toMatchObject({ balance: { onHand: 300 } });
  });

  it("is not promised twice, with two buyers at once", async () => {
    const outcomes = await Promise.all([reserve(600), reserve(600)]);
    expect(outcomes.map(({ ok }) => ok).sort()).toEqual([false, true]);
    expect(await entry()).toMatchObject({ balance: { onHand: 900, reserved: 600 } });
  });

  it("is not cut by one buyer while another reserves it", async () => {
    const outcomes = await Promise.all([reserve(600), cut(600)]);
    expect(outcomes.map(({ ok }) => ok).sort()).toEqual([false, true]);
  });

  it("is the sum of its movements, which are all kept, with who and why", async () => {
    await cut(100);
    await adjustLot(company, { lot, by: 20, reason: "A remnant in the box." }, doing);
    await countLot(company, { lot, counted: 805, reason: "" }, doing);
    await moveLot(company, { lot, location: "shelf 9" }, doing);
    const seen = await loadLot(company, lot);
    expect(seen?.movements.map(({ kind, quantity, left }) => [kind, quantity, left])).toEqual([
      ["moved", 0, 805],
      ["counted", -15, 805],
      ["adjusted", 20, 820],
      ["cut", -100, 800],
      ["register", 900, 900],
    ]);
    expect(seen?.movements[1]).toMatchObject({ who: "Wren", production: "reedmere" });
    expect(seen?.lot).toMatchObject({ location: "shelf 9", balance: { onHand: 805 } });
    expect(await amiss()).toEqual([]);
  });

  it("makes the plans of every production stale when it changes", async () => {
    const before = await loadStaging(company, "reedmere");
    await cut(100);
    const after = await loadStaging(company, "reedmere");
    expect(after?.inputRevision).toBe((before?.inputRevision ?? 0) + 1);
    expect(after?.staging.lots.find(({ code }) => code === lot)?.quantity).toBe(800);
  });

  it("is told by a movement when a file changes it", async () => {
    const staging = {
      ...sampleStaging,
      lots: sampleStaging.lots.map((each) => (each.code === "L1" ? { ...each, quantity: 914_000 } : each)),
    };
    await saveStaging(company, doing.user, staging);
    const movements = (await loadLot(company, "L1"))?.movements ?? [];
    expect(movements.map(({ kind, quantity }) => [kind, quantity])).toEqual([
      ["register", -400],
      ["register", 914_400],
    ]);
  });
});

describe("a reservation", () => {
  it("is used up by what is cut from it, and the rest of it stays", async () => {
    const held = await reserve(600);
    if (!held.ok) throw new Error("not reserved");
    expect((await cut(500)).ok).toBe(false);
    expect((await cut(400, held.value.code)).ok).toBe(true);
    expect(await entry()).toMatchObject({ balance: { onHand: 500, reserved: 200 } });
    expect((await cut(300, held.value.code)).ok).toBe(true);
    expect(await entry()).toMatchObject({ balance: { onHand: 200, reserved: 0 } });
    expect((await loadReservations(company)).filter((reservation) => reservation.lot === lot)).toEqual([]);
  });

  it("is given up, newest first, when a count finds less", async () => {
    await reserve(300);
    await reserve(400);
    const counted = await countLot(company, { lot, counted: 350, reason: "" }, doing);
    expect(counted).toEqual({ ok: true, value: { left: 350, released: [400] } });
    expect(await entry()).toMatchObject({ balance: { onHand: 350, reserved: 300 } });
  });

  it("is released once, and only within its company", async () => {
    const held = await reserve(300);
    if (!held.ok) throw new Error("not reserved");
    const { code } = held.value;
    expect(await releaseReservation(stranger, code, { ...doing, user: null, production: null })).toMatchObject({ ok: false });
    expect((await releaseReservation(company, code, doing)).ok).toBe(true);
    expect(await releaseReservation(company, code, doing)).toEqual({ ok: false, error: { kind: "gone", what: "reservation" } });
  });
});

describe("an off-cut", () => {
  it("is a lot of its own with the same dye lot and its parent, and nothing is lost between them", async () => {
    const parted = await partOff(company, { lot, quantity: 200, breadth: 5000, location: "box 2" }, doing);
    expect(parted).toEqual({ ok: true, value: { code: `${lot}.1` } });
    const offcut = await loadLot(company, `${lot}.1`);
    expect(offcut?.lot).toMatchObject({ parent: lot, dyeLot: "77", breadth: 5000, location: "box 2", balance: { onHand: 200 } });
    expect((await loadLot(company, lot))?.offcuts).toEqual([`${lot}.1`]);
    expect(await entry()).toMatchObject({ balance: { onHand: 700 } });
    expect(await partOff(company, { lot, quantity: 701, breadth: null, location: "" }, doing)).toMatchObject({ ok: false });
    expect(await amiss()).toEqual([]);
  });

  it("stays when a staging is brought in again whose files do not know it", async () => {
    await partOff(company, { lot: "L1", quantity: 200, breadth: null, location: "" }, doing);
    await saveStaging(company, doing.user, sampleStaging);
    expect((await loadShelf(company)).map(({ code }) => code)).toContain("L1.1");
  });
});

describe("a lot the register has on order", () => {
  it("lies on the shelf once it has come, by a movement, and comes once", async () => {
    await database().lot.updateMany({ where: { companyId: company, code: lot }, data: { arrives: new Date("2027-02-01T00:00:00Z") } });
    expect(await cut(1)).toEqual({ ok: false, error: { kind: "no lot", lot } });
    const came = { lot, quantity: 880, location: "shelf 2", dyeLot: "81", reason: "Came." };
    expect((await bookInLot(company, came, doing)).ok).toBe(true);
    expect(await entry()).toMatchObject({ arrives: null, dyeLot: "81", location: "shelf 2", balance: { onHand: 880 } });
    expect(await bookInLot(company, came, doing)).toEqual({ ok: false, error: { kind: "no lot", lot } });
    expect(await amiss()).toEqual([]);
  });
});

describe("another company", () => {
  it("sees nothing of the shelf and changes nothing on it", async () => {
    expect(await loadShelf(stranger)).toEqual([]);
    expect(await loadLot(stranger, lot)).toBeNull();
    const theirs = { ...doing, user: null, production: null };
    expect(await adjustLot(stranger, { lot, by: -1, reason: "x" }, theirs)).toEqual({ ok: false, error: { kind: "no lot", lot } });
  });
});
