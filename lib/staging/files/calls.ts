import * as z from "zod";
import { orNull } from "../cells/cell";
import { clock, day } from "../cells/times";
import { codeText, oneOf } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

export const calls = stagingFile({
  name: "calls.csv",
  about:
    "Performers' days: the span of the working day, and the class, rehearsals, performances and rests in it. Fittings are placed in what is left.",
  key: [],
  schema: () =>
    z.object({
      performer: column(orNull(codeText()), { meaning: "Who is called", example: "ines", empty: "everybody", refersTo: "performers" }),
      date: column(day(), { meaning: "Day", unit: "day", example: "2027-02-02" }),
      from: column(clock(), { meaning: "Begins", unit: "clock", example: "10:00" }),
      to: column(clock(), { meaning: "Ends", unit: "clock", example: "11:15" }),
      kind: column(oneOf(["span", "class", "rehearsal", "performance", "rest"]), {
        meaning: "span (the working day itself), class, rehearsal, performance or rest",
        example: "class",
      }),
    }),
});
