import * as z from "zod";
import { orNull } from "../cells/cell";
import { length, quantity } from "../cells/numbers";
import { day } from "../cells/times";
import { anyText, codeText } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

export const lots = stagingFile({
  name: "lots.csv",
  about: "Dye lots of materials on the shelf or on order.",
  key: ["code"],
  schema: ({ lengths }) =>
    z.object({
      code: column(codeText(), { meaning: "Short name", example: "L-031" }),
      material: column(codeText(), { meaning: "Material", example: "net-white-54", refersTo: "materials" }),
      dyeLot: column(anyText(), { meaning: "The maker's number of the dye lot", example: "7741", empty: "not known" }),
      quantity: column(quantity(lengths), {
        meaning: "What is there: a length with its unit (of cloth one length, not several), or a count",
        unit: "length or count",
        example: "12 yd",
      }),
      location: column(anyText(), { meaning: "Where it lies", example: "shelf 4", empty: "not said" }),
      breadth: column(orNull(length(lengths)), {
        meaning: "Breadth of an off-cut narrower than the cloth",
        unit: "length",
        example: "24 in",
        empty: "as wide as the cloth",
      }),
      arrives: column(orNull(day()), {
        meaning: "Day it is promised for, when on order",
        unit: "day",
        example: "2027-01-25",
        empty: "it is here",
      }),
    }),
});
