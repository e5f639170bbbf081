import type { Reservation } from "#lib/stock/movement";
import type { Prisma } from "../generated/client";
import type { Changing } from "./changeLot";

export const reservedWith = {
  lot: { select: { code: true } },
  production: { select: { code: true } },
  set: { select: { code: true } },
} as const satisfies Prisma.ReservationInclude;

type Row = Prisma.ReservationGetPayload<{ include: typeof reservedWith }>;

export const asReservation = (row: Row): Reservation => ({
  code: row.id,
  lot: row.lot.code,
  production: row.production.code,
  set: row.set?.code ?? null,
  garments: row.garments,
  quantity: Number(row.quantity),
  state: row.state as Reservation["state"],
});

/** What is held of a locked lot, the oldest first. */
export async function heldIn({ tx, companyId, lot }: Changing): Promise<readonly Reservation[]> {
  const rows = await tx.reservation.findMany({
    where: { companyId, lotId: lot.id, state: "held" },
    include: reservedWith,
    orderBy: [{ at: "asc" }, { id: "asc" }],
  });
  return rows.map(asReservation);
}

/** What of a locked lot is held by this code; undefined when it is not. */
export const heldAs = async (changing: Changing, code: string): Promise<Reservation | undefined> =>
  (await heldIn(changing)).find((reservation) => reservation.code === code);
