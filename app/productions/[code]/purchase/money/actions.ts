"use server";

import { revalidatePath } from "next/cache";
import * as z from "zod";
import { MATERIAL_KINDS } from "#lib/materials/material";
import { keepBudgetShare } from "#prisma/stock/budgetShares";
import { loadProduction } from "../../../../_data/stagingPlan";
import { memberAction } from "../../../../_gate/action";
import { done, refused } from "../../../../_gate/outcome";
import { buyingHref } from "../buyingPages";
import { asMoney, productionInput } from "../inputs";
import { CATEGORY_WORDS } from "./categoryWords";

/** Says what may be spent on a kind of material. */
export const keepBudget = memberAction({
  act: "stock",
  name: null,
  input: productionInput.extend({ category: z.enum(MATERIAL_KINDS), amount: z.string().trim().max(40) }),
  run: async (member, { production, category, amount }) => {
    const view = await loadProduction(member.company, production);
    if (!view) return refused("There is no such production any more.");
    const read = amount === "" ? null : asMoney(view, amount);
    if (read && read.wrong !== null) return refused("The amount cannot be read.", { amount: read.wrong });
    const name = CATEGORY_WORDS[category];
    const detail = amount === "" ? `Budget for ${name}: none` : `Budget for ${name}: ${amount}`;
    const kept = await keepBudgetShare(member.company, member.user.id, { production, category, amount: read?.amount ?? null, detail });
    if (!kept) return refused("There is no such production any more.");
    revalidatePath(buyingHref(production, "/money"));
    return done(`${detail}.`);
  },
});
