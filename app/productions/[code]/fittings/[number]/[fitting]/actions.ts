"use server";

import { revalidatePath } from "next/cache";
import * as z from "zod";
import { readDate } from "#lib/calendar/readDate";
import { changesBetween } from "#lib/editing/changesBetween";
import { withAlteration } from "#lib/fittings/alteration";
import { FINDINGS, FITTING_ANSWERS } from "#lib/fittings/answer";
import { FIGURE_PLACES } from "#lib/fittings/places";
import { SKILLS } from "#lib/labour/skills";
import { ok } from "#lib/result";
import { readHours } from "#lib/units/hours";
import { addAnswer } from "#prisma/fittings/answers";
import { addMark, addMarkWithWork, dropMark } from "#prisma/fittings/marks";
import { productionHref, slug } from "../../../../../_data/address";
import { memberAction } from "../../../../../_gate/action";
import type { Edited } from "../../../../../_gate/editAction";
import { done, faulty, type Outcome, refused, shown } from "../../../../../_gate/outcome";
import { requireFitting } from "./requireFitting";

const at = {
  production: z.string().min(1).max(100),
  garment: z.string().min(1).max(40),
  fitting: z.string().min(1).max(80),
  performer: z.string().min(1).max(80),
};
const places = FIGURE_PLACES.map(({ code }) => code);

const minutes = z
  .string()
  .trim()
  .transform((text, context) => {
    if (text === "") return null;
    const read = readHours(text);
    if (read.ok && read.value > 0 && read.value <= 100 * 60) return read.value;
    context.addIssue({ code: "custom", message: read.ok ? "Between a minute and 100 hours." : read.error.mend });
    return z.NEVER;
  });

/** Writes a note down; what is to be altered or remade becomes a task of the garment in the same moment. */
export const keepFittingMark = memberAction({
  act: "work",
  name: null,
  input: z.object({
    ...at,
    part: z.string().min(1).max(80),
    place: z.enum(places as [string, ...string[]]),
    finding: z.enum(FINDINGS),
    text: z.string().trim().max(200),
    skill: z.enum(SKILLS).or(z.literal("").transform(() => null)),
    minutes,
  }),
  run: async (member, { production, part, skill, minutes: takes, ...mark }): Promise<Outcome<Edited>> => {
    const today = await requireFitting(member.company, production, mark);
    if (!today) return refused("That fitting is not in the plan any more. Nothing was noted.");
    const hand = { company: member.company, user: member.user.id, production };
    const { finding } = mark;
    const base = productionHref(production);
    if (finding === "fits" || finding === "note") {
      await addMark(hand, mark);
      revalidatePath(base, "layout");
      return shown("Noted.", { edit: null, effect: null, kept: {} });
    }
    const kept = await addMarkWithWork<never>(hand, mark, (staging) => {
      const asked = { ...mark, finding, skill, minutes: takes, askedBy: member.user.name, askedOn: today };
      const { code, title, next } = withAlteration(staging, asked);
      return ok({ code, title: `Fitting of ${mark.garment}: ${title}`, changes: changesBetween(staging, next) });
    });
    if (!kept.ok) {
      if (kept.error.kind === "faults") return faulty("It cannot be kept so. Nothing was written.", kept.error.faults);
      return refused("Somebody changed the same at this moment. Nothing was written: try again.");
    }
    revalidatePath(base, "layout");
    const { id } = kept.value;
    const to = `${base}/fittings/${slug(mark.garment)}/${slug(part)}?kept=${id}`;
    return { ok: true, message: "Noted.", to, value: { edit: id, effect: null, kept: {} } };
  },
});

export const dropFittingMark = memberAction({
  act: "work",
  name: null,
  input: z.object({ production: at.production, mark: z.uuid() }),
  run: async (member, { production, mark }) => {
    const gone = await dropMark({ company: member.company, user: member.user.id, production }, mark);
    revalidatePath(productionHref(production), "layout");
    return gone ? done("Taken away. The work it asked for stays until it is put back.") : refused("It was taken away already.");
  },
});

/** Says how a fitting went. */
export const keepFittingAnswer = memberAction({
  act: "work",
  name: null,
  input: z.object({
    ...at,
    answer: z.enum(FITTING_ANSWERS),
    on: z.string().transform((text, context) => {
      const read = readDate(text);
      if (read.ok) return read.value;
      context.addIssue({ code: "custom", message: read.error.mend });
      return z.NEVER;
    }),
    note: z.string().trim().max(300),
    fit: z.literal("yes").optional(),
    movement: z.literal("yes").optional(),
    look: z.literal("yes").optional(),
  }),
  run: async (member, { production, fit, movement, look, ...answer }) => {
    if (!(await requireFitting(member.company, production, answer)))
      return refused("That fitting is not in the plan any more. Nothing was written.");
    const signed = { fit: fit === "yes", movement: movement === "yes", look: look === "yes" };
    await addAnswer({ company: member.company, user: member.user.id, production }, { ...answer, ...signed });
    revalidatePath(productionHref(production), "layout");
    return done(
      answer.answer === "done"
        ? "Done."
        : answer.answer === "again"
          ? "It is to be placed once more."
          : "Written down: to be placed again.",
    );
  },
});
