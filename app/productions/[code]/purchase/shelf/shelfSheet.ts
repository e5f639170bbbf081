import type { XlsxSheet } from "#lib/exchange/writeXlsx";
import { freeOf } from "#lib/stock/movement";
import { loadShelf } from "#prisma/stock/shelf";
import { showQuantity } from "../../../../_data/quantity";
import type { ProductionView } from "../../../../_data/stagingPlan";
import type { Member } from "../../../../_gate/member";

/** What lies on the shelf and what is awaited: a row a lot. */
export const shelfSheet = async (member: Member, view: ProductionView): Promise<XlsxSheet> => {
  const { lengths } = view.prepared.staging.production;
  const lots = await loadShelf(member.company);
  return {
    name: "shelf",
    headings: [
      "lot",
      "material",
      "name",
      "colour",
      "dye_lot",
      "place",
      "there_is",
      "kept",
      "free",
      "breadth",
      "off_cut_of",
      "awaited",
      "order",
    ],
    rows: lots.map((lot) => {
      const show = (quantity: number) => showQuantity(quantity, lot.measure, lengths);
      return [
        ...[lot.code, lot.material, lot.name, lot.colour, lot.dyeLot, lot.location],
        ...[show(lot.balance.onHand), show(lot.balance.reserved), show(freeOf(lot.balance))],
        lot.breadth === null ? null : showQuantity(lot.breadth, "length", lengths, true),
        ...[lot.parent, lot.arrives && { day: lot.arrives }, lot.order?.number ?? null],
      ];
    }),
  };
};
