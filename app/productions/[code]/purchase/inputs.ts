import * as z from "zod";
import { isoDate } from "#lib/calendar/days";
import { readMoney } from "#lib/units/money";
import type { MinorUnits } from "#lib/units/quantities";
import type { ProductionView } from "../../../_data/stagingPlan";

export const productionInput = z.object({ production: z.string().min(1).max(100) });

/** Which order, as it was looked at: the version is of the order, or of the line that is changed. */
export const orderInput = productionInput.extend({ number: z.coerce.number().int().positive(), version: z.coerce.number().int() });

export const text = (most: number) => z.string().trim().min(1, "Fill this in.").max(most, `No more than ${most} letters.`);

export const asDay = z.string().transform((written, context) => {
  const day = isoDate(written.trim());
  if (day) return day;
  context.addIssue({ code: "custom", message: "Write a day like 2027-03-09." });
  return z.NEVER;
});

export const asPacks = z.coerce.number("Write a whole number.").int("Write a whole number.").min(0, "Not fewer than none.").max(1_000_000);

/** An amount in the production's currency. */
export const asMoney = (
  view: ProductionView,
  written: string,
): { readonly amount: MinorUnits; readonly wrong: null } | { readonly amount: null; readonly wrong: string } => {
  const read = readMoney(written, view.prepared.staging.production.currency);
  return read.ok ? { amount: read.value, wrong: null } : { amount: null, wrong: `${read.error.problem} ${read.error.mend}` };
};
