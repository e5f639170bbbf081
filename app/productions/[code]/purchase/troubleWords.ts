import type { OrderState } from "#lib/purchasing/order";
import { refusalText } from "#lib/stock/movement";
import type { LengthSystem } from "#lib/units/showLength";
import type { OrderTrouble } from "#prisma/orders/changeOrder";

const STATES: Readonly<Record<OrderState, string>> = {
  draft: "It is a draft: approve it first.",
  approved: "It is approved: open it again to change it.",
  placed: "It is placed, and something may have come: correct its lines, or close it.",
  closed: "It is closed: nothing more is expected. Draft another order.",
  cancelled: "It was cancelled. Draft another order.",
};

/** Why nothing was changed, and how to mend it. */
export const troubleWords = (trouble: OrderTrouble, lengths: LengthSystem): string => {
  switch (trouble.kind) {
    case "refused":
      return refusalText(trouble.refusal, trouble.lot, trouble.measure, lengths);
    case "no lot":
      return `There is no lot ${trouble.lot} on the shelf: it may be used up, or not here yet. Look at the shelf again.`;
    case "no order":
      return "There is no such order in this production. Look at the list of orders again.";
    case "gone":
      return `The ${trouble.what} is no longer there. Look at the page again.`;
    case "changed":
      return "Somebody changed this order since you opened it. Look at it again; what you typed is kept here.";
    case "state":
      return STATES[trouble.state];
  }
};
