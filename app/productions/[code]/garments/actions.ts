"use server";

import { revalidatePath } from "next/cache";
import * as z from "zod";
import { dropView, keepView } from "#prisma/views/views";
import { productionHref } from "../../../_data/address";
import { memberAction } from "../../../_gate/action";
import { done, refused } from "../../../_gate/outcome";
import { given, readQuery, writeQuery } from "./garmentQuery";

const production = z.string().min(1).max(100);

/** Keeps the list as it is seen under a name. */
export const keepGarmentView = memberAction({
  act: "read",
  name: null,
  input: z.object({
    production,
    name: z.string().trim().min(1, "Give it a name.").max(60, "No more than 60 letters."),
    query: z.string().max(2000),
    shared: z.literal("yes").optional(),
  }),
  run: async (member, { production: code, name, query, shared }) => {
    // Only what the list itself would write is kept.
    const asked = writeQuery({ ...readQuery(given(new URLSearchParams(query).entries())), page: 1 }).slice(1);
    const hand = { company: member.company, user: member.user.id, production: code };
    await keepView(hand, "garments", { name, query: asked, shared: shared === "yes" });
    revalidatePath(`${productionHref(code)}/garments`);
    return done(`Kept as ${name}.`);
  },
});

export const dropGarmentView = memberAction({
  act: "read",
  name: null,
  input: z.object({ production, view: z.uuid() }),
  run: async (member, { production: code, view }) => {
    const gone = await dropView({ company: member.company, user: member.user.id, production: code }, view);
    revalidatePath(`${productionHref(code)}/garments`);
    return gone ? done("Put away.") : refused("There is no such view any more.");
  },
});
