import * as z from "zod";
import { emptyMeans, orNull } from "../cells/cell";
import { share, wholeNumber } from "../cells/numbers";
import { day } from "../cells/times";
import { codeText, someText, yesNo } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

export const sets = stagingFile({
  name: "sets.csv",
  about: "Garments that must look alike.",
  key: ["code"],
  schema: () =>
    z.object({
      code: column(codeText(), { meaning: "Short name, used by pieces", example: "snow-skirts" }),
      name: column(someText(), { meaning: "Name on screens and lists", example: "Snow skirts" }),
      oneDyeLot: column(emptyMeans(yesNo(), true), { meaning: "Cut from one dye lot", unit: "yes or no", example: "yes", empty: "yes" }),
      repair: column(emptyMeans(share(1000), 0), {
        meaning: "Net and cloth bought beyond the need in the same dye lot, and kept for repair",
        unit: "per cent",
        example: "25%",
        empty: "0%",
      }),
      prototype: column(emptyMeans(yesNo(), false), {
        meaning: "The first is a prototype that the designer approves",
        unit: "yes or no",
        example: "yes",
        empty: "no",
      }),
      freeUntil: column(orNull(codeText()), {
        meaning: "Operation of the construction past which the rest wait for the approval",
        example: "gather",
        empty: "the rest may not be begun before",
      }),
      approvalDays: column(emptyMeans(wholeNumber(0, 100), 0), {
        meaning: "Working days the designer takes to look at the prototype",
        unit: "days",
        example: "2",
        empty: "0",
      }),
      approvedOn: column(orNull(day()), { meaning: "Day it was approved", unit: "day", example: "2027-02-01", empty: "not yet" }),
    }),
});
