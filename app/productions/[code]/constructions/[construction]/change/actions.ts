"use server";

import { z } from "zod";
import { drafted, withTexts } from "#lib/constructions/draft";
import { withRowActs } from "#lib/constructions/draftRows";
import { readRowAct, writeRowAct } from "#lib/constructions/rowActs";
import { versionMeant, versionsOf } from "#lib/constructions/versions";
import { addConstruction, type NotAdded } from "#prisma/editing/addConstruction";
import { constructionHref } from "../../../../../_data/address";
import { loadProduction } from "../../../../../_data/stagingPlan";
import { memberAction } from "../../../../../_gate/action";
import { may } from "../../../../../_gate/may";
import { faulty, type Outcome, type Refusal, refused, shown } from "../../../../../_gate/outcome";
import { draftEffect } from "./draftEffect";
import type { DraftState } from "./draftState";

const GONE = "This construction is not there any more. Nothing was changed.";

const input = z.looseObject({
  production: z.string(),
  construction: z.string(),
  version: z.coerce.number().int(),
  acts: z.string().default(""),
  /** `keep`, `work it out`, or a row to copy or take out. */
  press: z.string().default(""),
  as: z.enum(["version", "copy"]).default("version"),
  newCode: z.string().trim().default(""),
  pieces: z.enum(["all", "none"]).default("none"),
});

const refusal = (error: NotAdded): Refusal => {
  if (error.kind === "problem") return refused(error.message);
  if (error.kind === "faults") return faulty("It cannot be kept so. Nothing was written.", error.faults);
  return refused(GONE);
};

/** Works out what the draft would do, copies or takes out a row, or keeps it: as a new version, or as a construction of its own. */
export const changeConstruction = memberAction({
  act: "wardrobe",
  name: null,
  input,
  run: async (member, form): Promise<Outcome<DraftState | null>> => {
    const view = await loadProduction(member.company, form.production);
    const staging = view?.prepared.staging;
    const from = staging && versionMeant(staging.constructions, form.construction, form.version);
    if (!staging || !from) return refused(GONE);
    const acts = form.acts.split(" ").flatMap((text) => readRowAct(text) ?? []);
    const texts = new Map(Object.entries(form).flatMap(([name, text]) => (name.startsWith("v.") ? [[name.slice(2), String(text)]] : [])));
    const typed = withTexts(withRowActs(from, acts), texts);
    const act = readRowAct(form.press);
    const draft = act ? withTexts(withRowActs(typed.construction, [act]), new Map()) : typed;
    const effect = draft.faults.length > 0 ? null : draftEffect(staging, from, draft.construction, may(member.role, "money"));
    const state: DraftState = { acts: [...acts, ...(act ? [act] : [])].map(writeRowAct), draft, effect };
    if (form.press !== "keep") return shown(effect ? "Worked out." : "Something is wrong with it still.", state);
    if (draft.faults.length > 0) return faulty("Nothing was kept. Mend what is named below.", draft.faults);
    const newest = versionsOf(staging.constructions, from.code).at(-1)!;
    const kept =
      form.as === "copy"
        ? { ...draft.construction, code: form.newCode, version: 1 }
        : { ...draft.construction, version: newest.version + 1 };
    if (form.as === "copy" && staging.constructions.some(({ code }) => code === form.newCode))
      return refused(`There is a construction "${form.newCode}" already.`, { newCode: "Give it a code of its own." });
    const ofCode = drafted(kept).faults;
    if (ofCode.length > 0) return { ...faulty("Nothing was kept.", ofCode), fields: { newCode: ofCode[0]!.problem } };
    const added = await addConstruction(member.company, member.user.id, staging.production.code, kept, form.pieces);
    if (!added.ok) return refusal(added.error);
    return { ok: true, message: `Kept as version ${kept.version}.`, to: constructionHref(staging.production.code, kept.code), value: null };
  },
});
