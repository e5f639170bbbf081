import * as z from "zod";
import { emptyMeans, orNull } from "../cells/cell";
import { clock, day } from "../cells/times";
import { anyText, codeText } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

export const absences = stagingFile({
  name: "absences.csv",
  about: "Days, or parts of days, that a maker is away or the workroom is closed.",
  key: [],
  schema: () =>
    z.object({
      maker: column(orNull(codeText()), { meaning: "Who is away", example: "orla", empty: "the workroom is closed", refersTo: "makers" }),
      from: column(day(), { meaning: "First day away", unit: "day", example: "2027-02-08" }),
      to: column(emptyMeans(day(), null), { meaning: "Last day away", unit: "day", example: "2027-02-10", empty: "the same day" }),
      fromTime: column(orNull(clock()), {
        meaning: "Time it begins on each of the days",
        unit: "clock",
        example: "14:00",
        empty: "all day",
      }),
      toTime: column(orNull(clock()), { meaning: "Time it ends on each of the days", unit: "clock", example: "18:00", empty: "all day" }),
      reason: column(anyText(), { meaning: "What a colleague may know", example: "leave", empty: "not said" }),
    }),
});
