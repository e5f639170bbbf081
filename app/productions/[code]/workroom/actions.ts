"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { latestRun, startRun, stopRun } from "#prisma/plans/runs";
import { productionHref } from "../../../_data/address";
import { memberAction } from "../../../_gate/action";
import { done, refused } from "../../../_gate/outcome";

/** The same seed and rounds give the same plan again. */
const SEED = 1;
const ROUNDS = 200;

const production = z.object({ production: z.string().min(1) });

export const levelAgain = memberAction({
  act: "level",
  name: "level",
  input: production,
  run: async (member, input) => {
    const begun = await startRun(member.company, { productionCode: input.production, user: member.user.id, seed: SEED, rounds: ROUNDS });
    if (!begun) return refused("There is no such production any more.");
    return done(`Levelling ${input.production} was asked for.`, `${productionHref(input.production)}/workroom`);
  },
});

export const stopLevelling = memberAction({
  act: "level",
  name: "stop levelling",
  input: production.extend({ run: z.uuid() }),
  run: async (member, input) => {
    const run = await latestRun(member.company, input.production);
    if (run?.id !== input.run || !(await stopRun(member.company, run.id))) return refused("It had ended already.");
    revalidatePath(`${productionHref(input.production)}/workroom`);
    return done("It stops after this round and keeps the best plan so far.");
  },
});
