import * as z from "zod";
import { clock, day } from "../cells/times";
import { codeText, oneOf, someText } from "../cells/words";
import { column } from "../column";
import { MILESTONE_KINDS } from "../staging";
import { stagingFile } from "../stagingFile";

export const milestones = stagingFile({
  name: "milestones.csv",
  about: "Days that things must be ready for.",
  key: ["code"],
  schema: () =>
    z.object({
      code: column(codeText(), { meaning: "Short name, used by pieces", example: "dress" }),
      kind: column(oneOf(MILESTONE_KINDS), { meaning: MILESTONE_KINDS.join(", "), example: "dress rehearsal" }),
      name: column(someText(), { meaning: "Name on screens and lists", example: "First dress rehearsal" }),
      date: column(day(), { meaning: "Its day", unit: "day", example: "2027-03-09" }),
      at: column(clock(), { meaning: "Time of day by which things are ready", unit: "clock", example: "09:30" }),
    }),
});
