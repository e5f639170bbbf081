import { revalidatePath } from "next/cache";
import type * as z from "zod";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Result } from "#lib/result";
import type { AuthorizedCompany } from "#prisma/authorized";
import type { OrderDoing, OrderTrouble } from "#prisma/orders/changeOrder";
import { loadOrder } from "#prisma/orders/load";
import { loadProduction, type ProductionView } from "../../../../_data/stagingPlan";
import type { Member } from "../../../../_gate/member";
import { done, type Outcome, refused } from "../../../../_gate/outcome";
import { orderInput } from "../inputs";
import { readQuantity } from "../readQuantity";
import { troubleWords } from "../troubleWords";
import { orderHref } from "./orderHref";

type OrderInput = z.output<typeof orderInput>;

export const productionOf = (member: Member, code: string): Promise<ProductionView | null> => loadProduction(member.company, code);

/** How a change of an order ended, in words; its page is shown anew. */
export const orderOutcome = (
  view: ProductionView,
  { production, number }: OrderInput,
  changed: Result<unknown, OrderTrouble>,
  message: string,
): Outcome => {
  if (!changed.ok) return refused(troubleWords(changed.error, view.prepared.staging.production.lengths));
  revalidatePath(orderHref(production, number));
  return done(message);
};

type Ending = (company: AuthorizedCompany, on: PlainDate, doing: OrderDoing) => Promise<Result<unknown, OrderTrouble>>;

/** An action that brings an order to another state, today. */
export const ending = (said: string, end: Ending) => ({
  act: "stock" as const,
  name: null,
  input: orderInput,
  run: async (member: Member, input: OrderInput): Promise<Outcome> => {
    const view = await productionOf(member, input.production);
    if (!view) return refused("There is no such production any more.");
    const doing = { ...input, user: member.user.id, detail: `Order ${input.number}: ${said}` };
    return orderOutcome(view, input, await end(member.company, view.today, doing), `It is ${said}.`);
  },
});

/** Reads a quantity of a line's material, in its own measure, and goes on with it. */
export const withQuantity = async (
  member: Member,
  input: OrderInput & { readonly line: number; readonly quantity: string },
  go: (view: ProductionView, quantity: number) => Promise<Outcome>,
): Promise<Outcome> => {
  const view = await productionOf(member, input.production);
  const order = view && (await loadOrder(member.company, view.prepared.staging.production.code, input.number));
  const line = order?.lines.find((each) => each.line === input.line);
  if (!view || !line) return refused(troubleWords({ kind: "no order" }, "in"));
  const read = readQuantity(input.quantity, line.measure, view.prepared.staging.production.lengths);
  return read.wrong === null ? go(view, read.quantity) : refused("The quantity cannot be read.", { quantity: read.wrong });
};
