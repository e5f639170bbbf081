import type { XlsxSheet } from "#lib/exchange/writeXlsx";
import { keptOf, openOf, shownState } from "#lib/purchasing/order";
import { awaitedOf, receivedOf } from "#lib/purchasing/spending";
import { loadOrders } from "#prisma/orders/load";
import { showQuantity } from "../../../../_data/quantity";
import type { ProductionView } from "../../../../_data/stagingPlan";
import type { Member } from "../../../../_gate/member";
import { moneyCell } from "../moneyCell";
import { stateWord } from "./stateWords";

/** Every line of every order as it stands: a row a line; carriage is a row of its own. */
export const ordersSheet = async (member: Member, view: ProductionView): Promise<XlsxSheet> => {
  const { code, currency, lengths } = view.prepared.staging.production;
  const money = (amount: number) => moneyCell(amount, currency);
  const orders = await loadOrders(member.company, code);
  return {
    name: "orders",
    headings: [
      ...["order", "supplier", "state", "placed_on", "material", "name", "colour", "packs", "pack", `price_${currency}`],
      ...["came", "to_come", "promised", `received_${currency}`, `to_come_${currency}`, "garments"],
    ],
    rows: orders.flatMap((order) => {
      const head = [order.number, order.supplier, stateWord(shownState(order)), order.placedOn && { day: order.placedOn }];
      const lines = order.lines.map((line) => {
        const show = (quantity: number) => showQuantity(quantity, line.measure, lengths);
        return [
          ...[...head, line.material, line.name, line.colour, line.packs, show(line.pack), money(line.pricePerPack)],
          ...[show(keptOf(line)), show(order.state === "placed" ? openOf(line) : 0), line.promised && { day: line.promised }],
          ...[money(receivedOf(line)), money(awaitedOf(order, line)), line.garments.join(" ")],
        ];
      });
      const carriage = [...head, null, "Carriage", null, null, null, money(order.freight), null, null, null, null, null, null];
      return order.freight > 0 ? [...lines, carriage] : lines;
    }),
  };
};
