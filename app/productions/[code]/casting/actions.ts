"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { recast } from "#lib/casting/recast";
import { changesBetween } from "#lib/editing/changesBetween";
import { failed, ok } from "#lib/result";
import { keepEdit } from "#prisma/editing/keepEdit";
import { takeBack } from "#prisma/editing/takeBack";
import { productionHref } from "../../../_data/address";
import { loadProduction } from "../../../_data/stagingPlan";
import { memberAction } from "../../../_gate/action";
import { faulty, refused, shown } from "../../../_gate/outcome";
import { castingInput, changedSince, readRecasts } from "./castingInput";
import { recastTitle } from "./cellWords";
import { effectView } from "./effectView";

const GONE = "There is no such production any more.";

/** Says what a change of the casting would do; writes nothing. */
export const lookAtCasting = memberAction({
  act: "cast",
  name: null,
  input: castingInput,
  run: async (member, input) => {
    const view = await loadProduction(member.company, input.production);
    if (!view) return refused(GONE);
    const changes = readRecasts(input, view.prepared.staging);
    if (!changes.ok) return refused(changes.error);
    return shown("Nothing is kept yet.", { effect: effectView(view, changes.value), changes: JSON.stringify(changes.value) });
  },
});

/** Keeps changes of the casting as one edit, unless somebody has changed one of the cells since they were looked at. */
export const keepCasting = memberAction({
  act: "cast",
  name: null,
  input: z.object({ production: z.string().min(1), changes: z.string().min(2), seen: z.string().min(2) }),
  run: async (member, { production, changes, seen }) => {
    const kept = await keepEdit<{ readonly kind: "said"; readonly text: string }>(member.company, member.user.id, production, (staging) => {
      const read = readRecasts({ production, changes }, staging);
      if (!read.ok) return failed({ kind: "said", text: read.error });
      const since = changedSince(seen, staging);
      if (since !== null) return failed({ kind: "said", text: since });
      return ok({ title: recastTitle(staging, read.value), changes: changesBetween(staging, recast(staging, read.value)) });
    });
    revalidatePath(`${productionHref(production)}/casting`);
    if (kept.ok) return shown(kept.value.id === null ? "Nothing was different." : "Kept.", { edit: kept.value.id });
    switch (kept.error.kind) {
      case "said":
        return refused(kept.error.text);
      case "faults":
        return faulty("It cannot be kept so. Nothing was written.", kept.error.faults);
      case "no production":
        return refused(GONE);
      case "conflict":
        return refused("Somebody has changed the casting at this moment. Nothing was written: look at it again.");
    }
  },
});

/** Takes a kept change of the casting back. */
export const takeCastingBack = memberAction({
  act: "cast",
  name: null,
  input: z.object({ production: z.string().min(1), edit: z.uuid() }),
  run: async (member, { production, edit }) => {
    const back = await takeBack(member.company, member.user.id, production, { what: { id: edit }, may: (file) => file === "casting.csv" });
    revalidatePath(`${productionHref(production)}/casting`);
    return back.ok
      ? shown("Taken back.", { edit: null })
      : refused("It cannot be taken back here: it was taken back already, or somebody has changed the same place since.");
  },
});
