"use server";

import * as z from "zod";
import { approveOrder, cancelOrder, closeOrder, placeOrder, reopenOrder } from "#prisma/orders/advance";
import { changeDraft, changeTerms, draftOrder } from "#prisma/orders/draft";
import { correctLine, returnGoods } from "#prisma/orders/putRight";
import { receiveGoods } from "#prisma/orders/receive";
import { memberAction } from "../../../../_gate/action";
import { done, refused } from "../../../../_gate/outcome";
import { asDay, asMoney, asPacks, orderInput, productionInput, text } from "../inputs";
import { ending, orderOutcome, productionOf, withQuantity } from "./orderActing";
import { orderHref } from "./orderHref";
import { wishOf } from "./wishes";

/** Drafts an order from lines of the purchase list as it is now. */
export const draftFromList = memberAction({
  act: "stock",
  name: null,
  input: productionInput.extend({ supplier: text(200), pick: z.union([z.string(), z.array(z.string())]).optional() }),
  run: async (member, { production, supplier, pick }) => {
    const view = await productionOf(member, production);
    if (!view) return refused("There is no such production any more.");
    const picked = [pick ?? []].flat();
    if (picked.length === 0) return refused("Tick the lines that are to be ordered.");
    const wish = wishOf(view, supplier, picked);
    if (!wish) return refused("The list has changed: nobody sells these as you saw them. Look at it again.");
    const number = await draftOrder(member.company, { ...wish, production, user: member.user.id, today: view.today });
    if (number === null) return refused("A material of these lines is no longer there. Look at the list again.");
    return done(`Order ${number} is drafted.`, orderHref(production, number));
  },
});

export const changeDraftLine = memberAction({
  act: "stock",
  name: null,
  input: orderInput.extend({ line: z.coerce.number().int(), packs: asPacks, price: text(40) }),
  run: async (member, input) => {
    const view = await productionOf(member, input.production);
    if (!view) return refused("There is no such production any more.");
    const price = asMoney(view, input.price);
    if (price.wrong !== null) return refused("The price cannot be read.", { price: price.wrong });
    const { line, packs } = input;
    const detail = `Order ${input.number}, line ${line}: ${packs} packs at ${input.price}`;
    const changed = await changeDraft(
      member.company,
      { line, packs, pricePerPack: price.amount },
      { ...input, user: member.user.id, detail },
    );
    return orderOutcome(view, input, changed, "Kept.");
  },
});

export const changeOrderTerms = memberAction({
  act: "stock",
  name: null,
  input: orderInput.extend({ freight: text(40), note: z.string().max(1000) }),
  run: async (member, input) => {
    const view = await productionOf(member, input.production);
    if (!view) return refused("There is no such production any more.");
    const freight = asMoney(view, input.freight);
    if (freight.wrong !== null) return refused("The carriage cannot be read.", { freight: freight.wrong });
    const detail = `Order ${input.number}: carriage ${input.freight}; ${input.note || "no note"}`;
    const terms = { freight: freight.amount, note: input.note };
    return orderOutcome(view, input, await changeTerms(member.company, terms, { ...input, user: member.user.id, detail }), "Kept.");
  },
});

export const approve = memberAction(ending("approved", approveOrder));
export const close = memberAction(ending("closed: nothing more is expected", closeOrder));
export const cancel = memberAction(ending("cancelled", cancelOrder));
export const reopen = memberAction(ending("opened again", (company, _on, doing) => reopenOrder(company, doing)));

export const place = memberAction({
  act: "stock",
  name: null,
  input: orderInput.extend({ promised: asDay }),
  run: async (member, input) => {
    const view = await productionOf(member, input.production);
    if (!view) return refused("There is no such production any more.");
    const detail = `Order ${input.number}: placed, promised for ${input.promised}`;
    const placed = { on: view.today, promised: new Map(), otherwise: input.promised };
    return orderOutcome(view, input, await placeOrder(member.company, placed, { ...input, user: member.user.id, detail }), "Placed.");
  },
});

export const receive = memberAction({
  act: "stock",
  name: null,
  input: orderInput.extend({
    ...{ line: z.coerce.number().int(), quantity: text(40), on: asDay, charged: z.string().trim().max(40) },
    ...{ dyeLot: z.string().trim().max(60), location: z.string().trim().max(100), note: z.string().trim().max(500) },
  }),
  run: async (member, input) =>
    withQuantity(member, input, async (view, quantity) => {
      const charged = input.charged === "" ? null : asMoney(view, input.charged);
      if (charged && charged.wrong !== null) return refused("What was charged cannot be read.", { charged: charged.wrong });
      const detail = `Order ${input.number}, line ${input.line}: received ${input.quantity}`;
      const { line, on, dyeLot, location, note } = input;
      const delivered = { line, on, quantity, dyeLot, location, note, charged: charged?.amount ?? null };
      const came = await receiveGoods(member.company, delivered, { ...input, user: member.user.id, detail });
      return orderOutcome(view, input, came, came.ok ? `Booked in as lot ${came.value.lot}.` : "");
    }),
});

export const giveBack = memberAction({
  act: "stock",
  name: null,
  input: orderInput.extend({
    ...{ line: z.coerce.number().int(), lot: text(100), quantity: text(40), on: asDay, credit: z.string().trim().max(40) },
    why: z.string().trim().min(1, "Say why.").max(500),
  }),
  run: async (member, input) =>
    withQuantity(member, input, async (view, quantity) => {
      const credit = asMoney(view, input.credit || "0");
      if (credit.wrong !== null) return refused("The credit cannot be read.", { credit: credit.wrong });
      const detail = `Order ${input.number}, line ${input.line}: sent back ${input.quantity} of lot ${input.lot}. ${input.why}`;
      const { line, lot, on, why } = input;
      const sent = { line, lot, on, why, quantity, credit: credit.amount };
      return orderOutcome(view, input, await returnGoods(member.company, sent, { ...input, user: member.user.id, detail }), "Sent back.");
    }),
});

export const correct = memberAction({
  act: "stock",
  name: null,
  input: orderInput.extend({
    ...{ line: z.coerce.number().int(), packs: asPacks, price: text(40), promised: asDay },
    why: z.string().trim().min(1, "Say why.").max(500),
  }),
  run: async (member, input) => {
    const view = await productionOf(member, input.production);
    if (!view) return refused("There is no such production any more.");
    const price = asMoney(view, input.price);
    if (price.wrong !== null) return refused("The price cannot be read.", { price: price.wrong });
    const { line, packs, promised, why } = input;
    const detail = `Order ${input.number}, line ${line}: ${packs} packs at ${input.price}, promised for ${promised}. ${why}`;
    const correction = { line, on: view.today, why, terms: { packs, pricePerPack: price.amount, promised } };
    return orderOutcome(
      view,
      input,
      await correctLine(member.company, correction, { ...input, user: member.user.id, detail }),
      "Put right.",
    );
  },
});
