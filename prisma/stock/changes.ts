import type { Quantity } from "#lib/materials/material";
import { ok, type Result } from "#lib/result";
import { countedBy, toRelease } from "#lib/stock/movement";
import type { AuthorizedCompany } from "../authorized";
import { newId } from "../ids";
import { booked, type Changing, changeLot, type Doing, type StockTrouble } from "./changeLot";
import { heldAs, heldIn } from "./held";

type Outcome<Value> = Promise<Result<Value, StockTrouble>>;
/** What the lot holds afterwards. */
interface Left {
  readonly left: Quantity;
}

/** Cloth is cut off a lot, or what was cut too much is put back. `reservation`: cut from what is kept for it, which is used up by as much. */
export const cutLot = (
  company: AuthorizedCompany,
  cut: {
    readonly lot: string;
    readonly kind: "cut" | "put back";
    readonly quantity: Quantity;
    readonly garments: readonly string[];
    readonly reservation: string | null;
    readonly reason: string;
  },
  doing: Doing,
): Outcome<Left> =>
  changeLot(company, cut.lot, doing, async (changing) => {
    const held = cut.reservation === null ? null : await heldAs(changing, cut.reservation);
    if (held === undefined) return { ok: false, error: { kind: "gone", what: "reservation" } };
    const used = held ? Math.min(held.quantity, cut.quantity) : 0;
    const kept = await booked(changing, {
      ...{ user: doing.user, kind: cut.kind, reason: cut.reason, garments: cut.garments },
      quantity: cut.kind === "cut" ? -cut.quantity : cut.quantity,
      ...(held ? { uses: { id: held.code, quantity: used } } : {}),
    });
    if (kept.ok && held)
      await changing.tx.reservation.update({
        where: { companyId_id: { companyId: changing.companyId, id: held.code } },
        // A reservation keeps its last quantity when it is used up: none is ever of nothing.
        data: used === held.quantity ? { state: "used" } : { quantity: held.quantity - used },
      });
    return kept.ok ? ok({ left: kept.value.balance.onHand }) : kept;
  });

/**
 * What was counted is what there is. Where it is less than is reserved, reservations are given up, the newest first; their quantities are
 * told.
 */
export const countLot = (
  company: AuthorizedCompany,
  count: { readonly lot: string; readonly counted: Quantity; readonly reason: string },
  doing: Doing,
): Outcome<Left & { readonly released: readonly Quantity[] }> =>
  changeLot(company, count.lot, doing, async (changing) => {
    const { tx, companyId, lot } = changing;
    const held = await heldIn(changing);
    const released = toRelease(held, count.counted);
    await tx.reservation.updateMany({ where: { companyId, id: { in: released.map(({ code }) => code) } }, data: { state: "released" } });
    const reserved = lot.balance.reserved - released.reduce((sum, { quantity }) => sum + quantity, 0);
    const kept = await booked(
      { ...changing, lot: { ...lot, balance: { ...lot.balance, reserved } } },
      { user: doing.user, kind: "counted", quantity: countedBy(lot.balance, count.counted), reason: count.reason },
    );
    return kept.ok ? ok({ left: kept.value.balance.onHand, released: released.map(({ quantity }) => quantity) }) : kept;
  });

/** A correction by so much, with its reason. */
export const adjustLot = (
  company: AuthorizedCompany,
  adjust: { readonly lot: string; readonly by: Quantity; readonly reason: string },
  doing: Doing,
): Outcome<Left> =>
  changeLot(company, adjust.lot, doing, async (changing) => {
    const kept = await booked(changing, { user: doing.user, kind: "adjusted", quantity: adjust.by, reason: adjust.reason });
    return kept.ok ? ok({ left: kept.value.balance.onHand }) : kept;
  });

/** The lot lies somewhere else. */
export const moveLot = (
  company: AuthorizedCompany,
  move: { readonly lot: string; readonly location: string },
  doing: Doing,
): Outcome<null> =>
  changeLot(company, move.lot, doing, async (changing) => {
    const { tx, companyId, lot } = changing;
    await tx.lot.update({ where: { companyId_id: { companyId, id: lot.id } }, data: { location: move.location } });
    const reason = `From ${lot.location || "no place"} to ${move.location || "no place"}.`;
    const kept = await booked(changing, { user: doing.user, kind: "moved", quantity: 0, reason });
    return kept.ok ? ok(null) : kept;
  });

/** A rest becomes a lot of its own, of the same dye lot, with the lot it came from as its parent. Returns its code. */
export const partOff = (
  company: AuthorizedCompany,
  part: { readonly lot: string; readonly quantity: Quantity; readonly breadth: number | null; readonly location: string },
  doing: Doing,
): Outcome<{ readonly code: string }> =>
  changeLot(company, part.lot, doing, async (changing) => {
    const { lot } = changing;
    const out = await booked(changing, { user: doing.user, kind: "parted", quantity: -part.quantity, reason: "An off-cut." });
    if (!out.ok) return out;
    const offcut = await newOffcut(changing, part);
    const kept = await booked(
      { ...changing, lot: { ...lot, ...offcut, balance: { onHand: 0, reserved: 0 } } },
      { user: doing.user, kind: "parted", quantity: part.quantity, reason: `Off lot ${lot.code}.` },
    );
    return kept.ok ? ok({ code: offcut.code }) : kept;
  });

async function newOffcut({ tx, companyId, lot }: Changing, { breadth, location }: { breadth: number | null; location: string }) {
  const { materialId, dyeLot } = lot;
  const alike = await tx.lot.findMany({ where: { companyId, code: { startsWith: `${lot.code}.` } }, select: { code: true } });
  const taken = new Set(alike.map(({ code }) => code));
  let number = 1;
  while (taken.has(`${lot.code}.${number}`)) number++;
  return tx.lot.create({
    data: {
      ...{ id: newId(), companyId, materialId, dyeLot, code: `${lot.code}.${number}`, parentId: lot.id, quantity: 0 },
      ...{ breadth: breadth ?? lot.breadth, location },
    },
    select: { id: true, code: true },
  });
}
