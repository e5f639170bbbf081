"use server";

import { askForCuts } from "#prisma/stock/askForCuts";
import { loadProduction } from "../../../../_data/stagingPlan";
import { memberAction } from "../../../../_gate/action";
import { done, refused } from "../../../../_gate/outcome";
import { buyingHref } from "../buyingPages";
import { productionInput } from "../inputs";

/** Asks for better cutting plans, and for proofs. */
export const searchCutting = memberAction({
  act: "measurements",
  name: "search for better cutting",
  input: productionInput,
  run: async (member, { production }) => {
    const view = await loadProduction(member.company, production);
    if (!view) return refused("There is no such production any more.");
    const { code } = view.prepared.staging.production;
    await askForCuts(member.company, code);
    return done(`Better cutting is being looked for in ${code}.`, buyingHref(code, "/cutting"));
  },
});
