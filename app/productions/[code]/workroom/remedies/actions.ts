"use server";

import { z } from "zod";
import { REMEDY_FIELDS, readRemedy } from "#lib/whatif/remedies/readRemedy";
import type { Remedy } from "#lib/whatif/remedies/remedy";
import { loadCurrentPlan } from "#prisma/plans/load";
import { latestRemedyRun, startRemedyRun } from "#prisma/plans/remedyRuns";
import { productionHref } from "../../../../_data/address";
import { loadProduction } from "../../../../_data/stagingPlan";
import { memberAction } from "../../../../_gate/action";
import { done, refused } from "../../../../_gate/outcome";
import { BETWEEN } from "./ownFields";

/** So many of one's own are kept beside each other. */
const MOST_ASKED = 6;

const asked = z
  .object({
    production: z.string().min(1),
    /** Absent: what the causes of lateness suggest. */
    kind: z.enum(Object.keys(REMEDY_FIELDS) as [Remedy["kind"], ...Remedy["kind"][]]).optional(),
  })
  .catchall(z.string().max(200));

export const askWhatHelps = memberAction({
  act: "level",
  name: "what would help",
  input: asked,
  run: async (member, { production, kind, ...given }) => {
    const view = await loadProduction(member.company, production);
    const kept = await loadCurrentPlan(member.company, production);
    if (!view?.plan || !kept) return refused("There is no plan yet: level first.");
    const { productionId, today } = view;
    const remedies: Remedy[] = [];
    if (kind !== undefined) {
      const [piece = "", parameter = ""] = (given.piece ?? "").split(BETWEEN);
      const remedy = readRemedy(kind, { ...given, piece, parameter }, view.plan.staging, today);
      if (!remedy.ok) return refused(remedy.error);
      const before = await latestRemedyRun(member.company, productionId);
      const own = before?.planId === kept.planId ? before.asked.filter((one) => JSON.stringify(one) !== JSON.stringify(remedy.value)) : [];
      remedies.push(...own.slice(1 - MOST_ASKED), remedy.value);
    }
    const wish = { productionId, productionCode: production, planId: kept.planId, user: member.user.id, asked: remedies };
    if ((await startRemedyRun(member.company, wish)) === "one is active")
      return refused("Something is being tried already: wait for its answer.");
    return done(`What would help ${production} was asked.`, `${productionHref(production)}/workroom/remedies`);
  },
});
