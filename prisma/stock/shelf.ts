import type { PlainDate } from "#lib/calendar/plainDate";
import type { Measure, Quantity } from "#lib/materials/material";
import type { LotBalance, MovementKind, Reservation } from "#lib/stock/movement";
import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import type { Prisma } from "../generated/client";
import { plainDateOrNull } from "../plainDates";
import { asReservation, reservedWith } from "./held";

/** A lot as the shelf shows it. */
export interface ShelfEntry {
  readonly code: string;
  readonly material: string;
  readonly name: string;
  readonly colour: string;
  readonly kind: string;
  readonly measure: Measure;
  readonly dyeLot: string;
  readonly location: string;
  /** Null: it lies here. */
  readonly arrives: PlainDate | null;
  /** Number of the order it is awaited from, or came with; null for another. */
  readonly order: { readonly number: number; readonly production: string } | null;
  readonly parent: string | null;
  readonly breadth: number | null;
  /** What lies there, or is awaited. */
  readonly balance: LotBalance;
  readonly reservations: readonly Reservation[];
}

export interface ShelfMovement {
  readonly at: Date;
  readonly kind: MovementKind | "register";
  readonly quantity: Quantity;
  readonly left: Quantity;
  readonly reason: string;
  readonly garments: readonly string[];
  readonly who: string | null;
  readonly production: string | null;
}

const orderOf = { select: { order: { select: { number: true, production: { select: { code: true } } } } } } as const;
const entryWith = {
  material: { select: { code: true, name: true, colour: true, kind: true, measure: true } },
  parent: { select: { code: true } },
  reservations: { where: { state: "held" }, include: reservedWith, orderBy: [{ at: "asc" as const }, { id: "asc" as const }] },
  orderLines: { ...orderOf, take: 1 },
  receipts: { select: { line: orderOf }, take: 1 },
} as const satisfies Prisma.LotInclude;

type Row = Prisma.LotGetPayload<{ include: typeof entryWith }>;

const asEntry = (row: Row): ShelfEntry => {
  const reservations = row.reservations.map(asReservation);
  const order = (row.orderLines[0] ?? row.receipts[0]?.line)?.order;
  return {
    code: row.code,
    material: row.material.code,
    name: row.material.name,
    colour: row.material.colour,
    kind: row.material.kind,
    measure: row.material.measure as Measure,
    dyeLot: row.dyeLot,
    location: row.location,
    arrives: plainDateOrNull(row.arrives),
    order: order ? { number: order.number, production: order.production.code } : null,
    parent: row.parent?.code ?? null,
    breadth: row.breadth,
    balance: { onHand: Number(row.quantity), reserved: reservations.reduce((sum, { quantity }) => sum + quantity, 0) },
    reservations,
  };
};

/** All lots of the company that hold anything, or are awaited: by material, what lies here before what is awaited. */
export async function loadShelf(company: AuthorizedCompany): Promise<readonly ShelfEntry[]> {
  const rows = await database().lot.findMany({
    where: { companyId: company, retiredAt: null, quantity: { gt: 0 } },
    include: entryWith,
    orderBy: [{ material: { code: "asc" } }, { arrives: { sort: "asc", nulls: "first" } }, { code: "asc" }],
  });
  return rows.map(asEntry);
}

/** A lot, empty and retired ones too, with its off-cuts and its movements, the newest first; null when the company has none of that code. */
export async function loadLot(
  company: AuthorizedCompany,
  code: string,
): Promise<{ readonly lot: ShelfEntry; readonly offcuts: readonly string[]; readonly movements: readonly ShelfMovement[] } | null> {
  const row = await database().lot.findUnique({
    where: { companyId_code: { companyId: company, code } },
    include: { ...entryWith, offcuts: { select: { code: true }, orderBy: { code: "asc" } } },
  });
  if (!row) return null;
  const movements = await database().movement.findMany({
    where: { companyId: company, lotId: row.id },
    include: { by: { select: { user: { select: { name: true } } } }, production: { select: { code: true } } },
    orderBy: [{ at: "desc" }, { id: "desc" }],
  });
  return {
    lot: asEntry(row),
    offcuts: row.offcuts.map((offcut) => offcut.code),
    movements: movements.map((movement) => ({
      at: movement.at,
      kind: movement.kind as ShelfMovement["kind"],
      quantity: Number(movement.quantity),
      left: Number(movement.left),
      reason: movement.reason,
      garments: movement.garments,
      who: movement.by?.user.name ?? null,
      production: movement.production?.code ?? null,
    })),
  };
}

/** Everything held of the company's lots. */
export async function loadReservations(company: AuthorizedCompany): Promise<readonly Reservation[]> {
  const rows = await database().reservation.findMany({
    where: { companyId: company, state: "held" },
    include: reservedWith,
    orderBy: [{ at: "asc" }, { id: "asc" }],
  });
  return rows.map(asReservation);
}

/** Codes of all lots there are or were. */
export const codesOfLots = async (company: AuthorizedCompany): Promise<readonly string[]> =>
  (await database().lot.findMany({ where: { companyId: company }, select: { code: true } })).map(({ code }) => code);
