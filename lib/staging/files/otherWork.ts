import * as z from "zod";
import { ORIGINS } from "#lib/approvals/otherWork";
import { SKILLS } from "#lib/labour/skills";
import { emptyMeans, orNull } from "../cells/cell";
import { hours, wholeNumber } from "../cells/numbers";
import { day } from "../cells/times";
import { anyText, codeText, oneOf, someText } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

export const otherWork = stagingFile({
  name: "other_work.csv",
  about: "Work that no construction lists: samples, alterations, notes from the dress parade, and whatever else somebody asks for.",
  key: ["code"],
  schema: () =>
    z.object({
      code: column(codeText(), { meaning: "Short name", example: "note-7" }),
      origin: column(oneOf(ORIGINS), { meaning: ORIGINS.join(", "), example: "parade note" }),
      title: column(someText(), { meaning: "What is to be done", example: "Shorten the left sleeve" }),
      garment: column(orNull(codeText()), {
        meaning: "Number of the garment it is about. With a due of its own it is done on the finished garment",
        example: "MG 014",
        empty: "none",
      }),
      set: column(orNull(codeText()), { meaning: "Set it is about", example: "snow-skirts", empty: "none", refersTo: "sets" }),
      material: column(orNull(codeText()), {
        meaning: "Material it is about: nothing is cut from it before the work is done, unless it is a sample",
        example: "net-white-54",
        empty: "none",
        refersTo: "materials",
      }),
      gates: column(orNull(codeText()), {
        meaning: "Operation of the garment, or of every garment of the set, that waits until it is done",
        example: "mount",
        empty: "none",
      }),
      skill: column(oneOf(SKILLS), { meaning: SKILLS.join(", "), example: "hand" }),
      likely: column(hours(), { meaning: "Time it takes", unit: "hours and minutes", example: "45 min" }),
      low: column(orNull(hours()), {
        meaning: "Time it takes when all goes well",
        unit: "hours and minutes",
        example: "30 min",
        empty: "as likely",
      }),
      high: column(orNull(hours()), {
        meaning: "Time it takes when it does not",
        unit: "hours and minutes",
        example: "1 h 30",
        empty: "as likely",
      }),
      machine: column(orNull(someText()), { meaning: "Kind of machine it takes", example: "dye vat", empty: "none" }),
      priority: column(emptyMeans(wholeNumber(1, 3), 2), {
        meaning: "1 is first, 2 ordinary, 3 when there is time",
        unit: "count",
        example: "1",
        empty: "2",
      }),
      due: column(orNull(codeText()), {
        meaning: "Milestone by which it must be done",
        example: "dress",
        empty: "none of its own: a garment is not finished without it",
        refersTo: "milestones",
      }),
      waitsFor: column(orNull(codeText()), {
        meaning: "Approval it waits for (of `approvals.csv`, or a set of `sets.csv` for that of its prototype)",
        example: "ash-swatch",
        empty: "none",
      }),
      shownFor: column(orNull(codeText()), {
        meaning: "Approval that a sample is made for",
        example: "ash-swatch",
        empty: "none",
        refersTo: "approvals",
      }),
      askedBy: column(anyText(), { meaning: "Who asked for it", example: "designer", empty: "not said" }),
      askedOn: column(orNull(day()), {
        meaning: "Day it was asked for; it is not worked before",
        unit: "day",
        example: "2027-02-26",
        empty: "not said",
      }),
      doneOn: column(orNull(day()), { meaning: "Day it was done", unit: "day", example: "2027-03-01", empty: "not yet" }),
    }),
});
