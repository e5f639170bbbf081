import * as z from "zod";
import { wholeNumber } from "../cells/numbers";
import { codeText, someText } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

export const scenes = stagingFile({
  name: "scenes.csv",
  about: "Stretches of the running order.",
  key: ["code"],
  schema: () =>
    z.object({
      code: column(codeText(), { meaning: "Short name, used by appearances", example: "snowfall" }),
      name: column(someText(), { meaning: "Name on screens and lists", example: "Waltz of the snow" }),
      act: column(wholeNumber(1, 20), { meaning: "Act it is in", unit: "count", example: "1" }),
      starts: column(wholeNumber(0, 1440), { meaning: "Minutes after curtain up, intervals counted", unit: "minutes", example: "38" }),
      minutes: column(wholeNumber(1, 600), { meaning: "How long it lasts", unit: "minutes", example: "7" }),
    }),
});
