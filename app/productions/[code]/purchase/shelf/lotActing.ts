import { revalidatePath } from "next/cache";
import type { Quantity } from "#lib/materials/material";
import type { Result } from "#lib/result";
import type { Doing, StockTrouble } from "#prisma/stock/changeLot";
import { loadLot } from "#prisma/stock/shelf";
import { showQuantity } from "../../../../_data/quantity";
import { loadProduction, type ProductionView } from "../../../../_data/stagingPlan";
import type { Member } from "../../../../_gate/member";
import { done, type Outcome, refused } from "../../../../_gate/outcome";
import { readQuantity } from "../readQuantity";
import { troubleWords } from "../troubleWords";
import { lotHref } from "./lotHref";

interface LotInput {
  readonly production: string;
  readonly lot: string;
}

/** What an action on a lot works with. */
interface Acting {
  readonly view: ProductionView;
  /** Who does it, with what the audit says of the lot. */
  readonly doing: (said: string) => Doing;
  readonly quantity: Quantity;
  readonly show: (quantity: Quantity) => string;
}

/** Finds the production and the lot, reads a quantity in the lot's own measure (null: none is asked for), and goes on. */
export const withLot = async (
  member: Member,
  input: LotInput & { readonly quantity: string | null },
  go: (acting: Acting) => Promise<Outcome>,
  least = 1,
): Promise<Outcome> => {
  const view = await loadProduction(member.company, input.production);
  if (!view) return refused("There is no such production any more.");
  const { code, lengths } = view.prepared.staging.production;
  const found = await loadLot(member.company, input.lot);
  if (!found) return refused(troubleWords({ kind: "no lot", lot: input.lot }, lengths));
  const { measure } = found.lot;
  const read = input.quantity === null ? { quantity: 0, wrong: null } : readQuantity(input.quantity, measure, lengths, least);
  if (read.wrong !== null) return refused("The quantity cannot be read.", { quantity: read.wrong });
  return go({
    view,
    quantity: read.quantity,
    doing: (said) => ({ user: member.user.id, detail: `Lot ${input.lot}: ${said}`, production: code }),
    show: (quantity) => showQuantity(quantity, measure, lengths),
  });
};

/** How a change of a lot ended, in words; its page is shown anew. */
export const lotOutcome = (view: ProductionView, input: LotInput, changed: Result<unknown, StockTrouble>, message: string): Outcome => {
  const { code, lengths } = view.prepared.staging.production;
  if (!changed.ok) return refused(troubleWords(changed.error, lengths));
  revalidatePath(lotHref(code, input.lot));
  return done(message);
};

/** Numbers of garments as a person lists them, by comma. */
export const numbersIn = (text: string): readonly string[] =>
  text
    .split(/[,;\n]/)
    .map((number) => number.trim())
    .filter((number) => number !== "");
