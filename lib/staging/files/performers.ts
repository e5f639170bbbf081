import * as z from "zod";
import { emptyMeans } from "../cells/cell";
import { codeText, someText, yesNo } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

export const performers = stagingFile({
  name: "performers.csv",
  about: "The dancers.",
  key: ["code"],
  schema: () =>
    z.object({
      code: column(codeText(), { meaning: "Short name, used by casting, measurements and calls", example: "ines" }),
      name: column(someText(), { meaning: "Name on screens and lists", example: "Ines Falk" }),
      sizeGroup: column(codeText(), { meaning: "Where a missing measurement is taken from", example: "W10", refersTo: "sizes" }),
      minor: column(emptyMeans(yesNo(), false), {
        meaning: "Under the local age of majority: fittings need a chaperone",
        unit: "yes or no",
        example: "no",
        empty: "no",
      }),
    }),
});
