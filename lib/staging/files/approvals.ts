import * as z from "zod";
import { emptyMeans, orNull } from "../cells/cell";
import { wholeNumber } from "../cells/numbers";
import { day } from "../cells/times";
import { codeText, someText } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

export const approvals = stagingFile({
  name: "approvals.csv",
  about: "What somebody must approve before others may go on. The approval of a prototype stands in `sets.csv`.",
  key: ["code"],
  schema: () =>
    z.object({
      code: column(codeText(), { meaning: "Short name, used by other work", example: "ash-swatch" }),
      title: column(someText(), { meaning: "What is approved", example: "The ash grey of the net" }),
      by: column(emptyMeans(someText(), "designer"), {
        meaning: "Who looks: designer, choreographer, or a name",
        example: "choreographer",
        empty: "designer",
      }),
      days: column(emptyMeans(wholeNumber(0, 100), 0), {
        meaning: "Working days it is looked at, once its samples are made",
        unit: "days",
        example: "3",
        empty: "0",
      }),
      set: column(orNull(codeText()), { meaning: "Set that waits for it", example: "snow-skirts", empty: "none", refersTo: "sets" }),
      freeUntil: column(orNull(codeText()), {
        meaning: "Operation past which the garments of the set wait",
        example: "gather",
        empty: "they may not be begun before",
      }),
      material: column(orNull(codeText()), {
        meaning: "Material that is neither cut nor dyed before (it may be ordered)",
        example: "net-white-54",
        empty: "none",
        refersTo: "materials",
      }),
      askedOn: column(orNull(day()), {
        meaning: "Day it was handed over to be looked at",
        unit: "day",
        example: "2027-01-18",
        empty: "when its samples are made",
      }),
      expectedOn: column(orNull(day()), {
        meaning: "Day the answer is promised for; others go on from the next",
        unit: "day",
        example: "2027-01-21",
        empty: "not promised: after the working days",
      }),
      approvedOn: column(orNull(day()), { meaning: "Day it was approved", unit: "day", example: "2027-01-20", empty: "not yet" }),
    }),
});
