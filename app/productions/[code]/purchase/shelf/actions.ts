"use server";

import * as z from "zod";
import { readLength } from "#lib/units/readLength";
import { bookInLot } from "#prisma/stock/bookInLot";
import { adjustLot, countLot, cutLot, moveLot, partOff } from "#prisma/stock/changes";
import { releaseReservation, reserveLot } from "#prisma/stock/reserve";
import { memberAction } from "../../../../_gate/action";
import { refused } from "../../../../_gate/outcome";
import { asDay, productionInput, text } from "../inputs";
import { lotOutcome, numbersIn, withLot } from "./lotActing";

const lotInput = productionInput.extend({ lot: text(100) });
const quantity = text(40);
const reason = z.string().trim().max(500);

export const cut = memberAction({
  act: "take",
  name: null,
  input: lotInput.extend({ quantity, reason, kind: z.enum(["cut", "put back"]), garments: reason, reservation: z.string().max(100) }),
  run: (member, input) =>
    withLot(member, input, async ({ view, doing, quantity: amount }) => {
      const { lot, kind } = input;
      const from = kind === "cut" && input.reservation !== "" ? input.reservation : null;
      const taken = { lot, kind, quantity: amount, garments: numbersIn(input.garments), reservation: from, reason: input.reason };
      const changed = await cutLot(member.company, taken, doing(`${kind} ${input.quantity}`));
      return lotOutcome(view, input, changed, kind === "cut" ? "Cut and written down." : "Put back.");
    }),
});

export const count = memberAction({
  act: "take",
  name: null,
  input: lotInput.extend({ quantity, reason }),
  run: (member, input) =>
    withLot(
      member,
      input,
      async ({ view, doing, quantity: counted, show }) => {
        const changed = await countLot(
          member.company,
          { lot: input.lot, counted, reason: input.reason },
          doing(`counted ${input.quantity}`),
        );
        const released = changed.ok ? changed.value.released : [];
        const given = released.length > 0 ? ` It is less than was kept: ${released.map(show).join(", ")} given up, the newest first.` : "";
        return lotOutcome(view, input, changed, `Counted.${given}`);
      },
      0,
    ),
});

export const adjust = memberAction({
  act: "stock",
  name: null,
  input: lotInput.extend({ quantity, way: z.enum(["more", "less"]), reason: z.string().trim().min(1, "Say why.").max(500) }),
  run: (member, input) =>
    withLot(member, input, async ({ view, doing, quantity: amount }) => {
      const by = input.way === "more" ? amount : -amount;
      const changed = await adjustLot(
        member.company,
        { lot: input.lot, by, reason: input.reason },
        doing(`${input.quantity} ${input.way}: ${input.reason}`),
      );
      return lotOutcome(view, input, changed, "Adjusted.");
    }),
});

export const move = memberAction({
  act: "take",
  name: null,
  input: lotInput.extend({ location: z.string().trim().max(100) }),
  run: (member, input) =>
    withLot(member, { ...input, quantity: null }, async ({ view, doing }) => {
      const { lot, location } = input;
      return lotOutcome(
        view,
        input,
        await moveLot(member.company, { lot, location }, doing(`moved to ${location || "no place"}`)),
        "Moved.",
      );
    }),
});

export const part = memberAction({
  act: "take",
  name: null,
  input: lotInput.extend({ quantity, breadth: z.string().trim().max(40), location: z.string().trim().max(100) }),
  run: (member, input) =>
    withLot(member, input, async ({ view, doing, quantity: amount }) => {
      const read = input.breadth === "" ? null : readLength(input.breadth, view.prepared.staging.production.lengths);
      if (read && (!read.ok || read.value <= 0)) {
        const wrong = read.ok ? "Write more than nothing." : `${read.error.problem} ${read.error.mend}`;
        return refused("The breadth cannot be read.", { breadth: wrong });
      }
      const { lot, location } = input;
      const rest = { lot, quantity: amount, breadth: read?.ok ? read.value : null, location };
      const changed = await partOff(member.company, rest, doing(`an off-cut of ${input.quantity}`));
      return lotOutcome(view, input, changed, changed.ok ? `It is lot ${changed.value.code}: print its label.` : "");
    }),
});

export const reserve = memberAction({
  act: "stock",
  name: null,
  input: lotInput.extend({ quantity, set: z.string().max(100), garments: reason, reason }),
  run: (member, input) =>
    withLot(member, input, async ({ view, doing, quantity: amount }) => {
      const { lot } = input;
      const wish = { lot, set: input.set || null, garments: numbersIn(input.garments), quantity: amount, reason: input.reason };
      const kept = { ...doing(`${input.quantity} kept for ${input.set || input.production}`), production: input.production };
      return lotOutcome(view, input, await reserveLot(member.company, wish, kept), "Kept.");
    }),
});

export const release = memberAction({
  act: "stock",
  name: null,
  input: lotInput.extend({ reservation: z.uuid() }),
  run: (member, input) =>
    withLot(member, { ...input, quantity: null }, async ({ view, doing }) =>
      lotOutcome(view, input, await releaseReservation(member.company, input.reservation, doing("released")), "Released."),
    ),
});

/** A lot that a file said was on order has come. */
export const arrived = memberAction({
  act: "stock",
  name: null,
  input: lotInput.extend({ quantity, on: asDay, location: z.string().trim().max(100), dyeLot: z.string().trim().max(60) }),
  run: (member, input) =>
    withLot(member, input, async ({ view, doing, quantity: amount }) => {
      const { lot, location, dyeLot } = input;
      const came = { lot, quantity: amount, location, dyeLot, reason: `Came ${input.on}.` };
      return lotOutcome(view, input, await bookInLot(member.company, came, doing(`came, ${input.quantity}`)), "Booked in.");
    }),
});
