"use server";

import { z } from "zod";
import { loadPlan } from "#prisma/plans/load";
import { publishPlan } from "#prisma/plans/publish";
import { productionHref } from "../../../../_data/address";
import { loadProduction } from "../../../../_data/stagingPlan";
import { memberAction } from "../../../../_gate/action";
import { done, refused } from "../../../../_gate/outcome";

export const workByPlan = memberAction({
  act: "level",
  name: null,
  input: z.object({ production: z.string().min(1), plan: z.uuid() }),
  run: async (member, { production, plan }) => {
    const view = await loadProduction(member.company, production);
    const kept = view && (await loadPlan(member.company, view.productionId, plan));
    if (!kept) return refused("There is no such plan any more.");
    const published = await publishPlan(member.company, member.user.id, plan);
    if (!published.ok) return refused("Another production of the workroom has some of that time by now. Level again instead.");
    return done("The production works by it from now on.", `${productionHref(production)}/workroom/changes`);
  },
});
