"use server";

import { z } from "zod";
import { recast } from "#lib/casting/recast";
import { failed, ok } from "#lib/result";
import { loadProduction } from "../../../_data/stagingPlan";
import { memberAction } from "../../../_gate/action";
import { editAction } from "../../../_gate/editAction";
import { refused, shown } from "../../../_gate/outcome";
import { castingInput, changedSince, readRecasts } from "./castingInput";
import { recastTitle } from "./cellWords";
import { effectView } from "./effectView";

/** Says what a change of the casting would do; writes nothing. */
export const lookAtCasting = memberAction({
  act: "cast",
  name: null,
  input: castingInput,
  run: async (member, input) => {
    const view = await loadProduction(member.company, input.production);
    if (!view) return refused("There is no such production any more.");
    const changes = readRecasts(input, view.prepared.staging);
    if (!changes.ok) return refused(changes.error);
    return shown("Nothing is kept yet.", { effect: effectView(view, changes.value), changes: JSON.stringify(changes.value) });
  },
});

/** Keeps changes of the casting as one edit, unless somebody has changed one of the cells since they were looked at. */
export const keepCasting = editAction({
  act: "cast",
  input: z.object({ production: z.string().min(1), changes: z.string().min(2), seen: z.string().min(2) }),
  make: (staging, { production, changes, seen }) => {
    const read = readRecasts({ production, changes }, staging);
    if (!read.ok) return failed({ message: read.error });
    const since = changedSince(seen, staging);
    if (since !== null) return failed({ message: since });
    return ok({ title: recastTitle(staging, read.value), next: recast(staging, read.value) });
  },
});
