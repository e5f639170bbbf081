import type { PlainDate } from "#lib/calendar/plainDate";
import type { Transaction } from "../client";
import type { OrderLine, PurchaseOrder } from "../generated/client";
import { newId } from "../ids";
import { databaseDate } from "../plainDates";

/** What of a line is still to come. */
const openOf = ({ pack, packs, received }: OrderLine): bigint => {
  const open = pack * BigInt(packs) - received;
  return open > 0n ? open : 0n;
};

/** The lot of a line that is on order: made when it is placed, and kept to what is still to come, when, and of which dye lot if that is known. */
export async function awaitLine(
  tx: Transaction,
  companyId: string,
  order: Pick<PurchaseOrder, "number">,
  line: OrderLine,
  promised: PlainDate,
  dyeLot?: string,
): Promise<void> {
  const arrives = databaseDate(promised);
  const quantity = openOf(line);
  const where = { companyId_id: { companyId, id: line.lotId ?? newId() } };
  const code = `O${order.number}-${line.line}`;
  const { materialId } = line;
  const retiredAt = quantity > 0n ? null : new Date();
  const lot = await tx.lot.upsert({
    where,
    create: { id: where.companyId_id.id, companyId, materialId, code, dyeLot: "", quantity, location: "", arrives, retiredAt },
    update: { quantity, arrives, retiredAt, ...(dyeLot ? { dyeLot } : {}), version: { increment: 1 } },
    select: { id: true },
  });
  await tx.orderLine.update({ where: { companyId_id: { companyId, id: line.id } }, data: { lotId: lot.id, promised: arrives } });
}

/** What an order still awaits falls away. */
export async function dropAwaited(tx: Transaction, companyId: string, orderId: string): Promise<void> {
  await tx.lot.updateMany({
    where: { companyId, orderLines: { some: { orderId } }, retiredAt: null },
    data: { quantity: 0, retiredAt: new Date(), version: { increment: 1 } },
  });
}
