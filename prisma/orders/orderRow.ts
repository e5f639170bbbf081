import type { PlainDate } from "#lib/calendar/plainDate";
import type { Order, OrderLine, OrderState } from "#lib/purchasing/order";
import type { Prisma } from "../generated/client";
import { plainDate, plainDateOrNull } from "../plainDates";

/** An order as it is kept, with what a form must say to change it. */
export interface KeptOrder extends Order {
  /** Counts changes: a change names the version it was read at. */
  readonly version: number;
  readonly draftedOn: PlainDate;
  readonly draftedBy: string | null;
  readonly approvedBy: string | null;
  readonly lines: readonly KeptLine[];
}

export interface KeptLine extends OrderLine {
  readonly version: number;
}

const lot = { select: { code: true, dyeLot: true, location: true } } as const;
const name = { select: { user: { select: { name: true } } } } as const;
const inTurn = [{ at: "asc" as const }, { id: "asc" as const }];

export const orderWith = {
  production: { select: { code: true } },
  draftedBy: name,
  approvedBy: name,
  lines: {
    orderBy: { line: "asc" },
    include: {
      material: { select: { code: true, measure: true } },
      receipts: { include: { lot }, orderBy: inTurn },
      returns: { include: { lot }, orderBy: inTurn },
      corrections: { orderBy: inTurn },
    },
  },
} as const satisfies Prisma.PurchaseOrderInclude;

type OrderRow = Prisma.PurchaseOrderGetPayload<{ include: typeof orderWith }>;
type LineRow = OrderRow["lines"][number];

/** How far an order is follows from its days. */
export const stateOf = (row: {
  readonly approvedOn: Date | null;
  readonly placedOn: Date | null;
  readonly closedOn: Date | null;
  readonly cancelledOn: Date | null;
}): OrderState => {
  if (row.cancelledOn) return "cancelled";
  if (row.closedOn) return "closed";
  if (row.placedOn) return "placed";
  return row.approvedOn ? "approved" : "draft";
};

export const asOrder = (row: OrderRow): KeptOrder => ({
  number: String(row.number),
  supplier: row.supplier,
  production: row.production.code,
  currency: row.currency,
  state: stateOf(row),
  approvedOn: plainDateOrNull(row.approvedOn),
  placedOn: plainDateOrNull(row.placedOn),
  freight: Number(row.freight),
  note: row.note,
  version: row.version,
  draftedOn: plainDate(row.draftedOn),
  draftedBy: row.draftedBy?.user.name ?? null,
  approvedBy: row.approvedBy?.user.name ?? null,
  lines: row.lines.map(asLine),
});

const asLine = (row: LineRow): KeptLine => ({
  line: row.line,
  version: row.version,
  material: row.material.code,
  name: row.name,
  colour: row.colour,
  measure: row.material.measure as OrderLine["measure"],
  pack: Number(row.pack),
  packs: row.packs,
  pricePerPack: Number(row.pricePerPack),
  promised: plainDateOrNull(row.promised),
  oneLotSet: row.oneLotSet,
  inspectionDays: row.inspectionDays,
  neededBy: plainDateOrNull(row.neededBy),
  arithmetic: row.arithmetic,
  garments: row.garments,
  receipts: row.receipts.map((receipt) => ({
    day: plainDate(receipt.day),
    quantity: Number(receipt.quantity),
    dyeLot: receipt.lot.dyeLot,
    lot: receipt.lot.code,
    location: receipt.lot.location,
    charged: receipt.charged === null ? null : Number(receipt.charged),
  })),
  returns: row.returns.map((sent) => ({
    day: plainDate(sent.day),
    quantity: Number(sent.quantity),
    lot: sent.lot.code,
    why: sent.why,
    credit: Number(sent.credit),
  })),
  corrections: row.corrections.map((corrected) => ({
    day: plainDate(corrected.day),
    before: {
      packs: corrected.packsBefore,
      pricePerPack: Number(corrected.pricePerPackBefore),
      promised: plainDateOrNull(corrected.promisedBefore),
    },
    after: {
      packs: corrected.packsAfter,
      pricePerPack: Number(corrected.pricePerPackAfter),
      promised: plainDateOrNull(corrected.promisedAfter),
    },
    why: corrected.why,
  })),
});
