import * as z from "zod";
import { emptyMeans } from "../cells/cell";
import { wholeNumber } from "../cells/numbers";
import { codeText, someText } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

export const machines = stagingFile({
  name: "machines.csv",
  about: "Machines, vats, tables and fitting rooms, those that are alike in one row.",
  key: ["code"],
  schema: () =>
    z.object({
      code: column(codeText(), { meaning: "Short name", example: "ruffler" }),
      name: column(someText(), { meaning: "Name on screens and lists", example: "Gathering foot" }),
      kind: column(someText(), {
        meaning: "Kind that an operation asks for; a fitting room is of the kind fitting room",
        example: "ruffler",
      }),
      count: column(emptyMeans(wholeNumber(1, 100), 1), { meaning: "How many are alike", unit: "count", example: "2", empty: "1" }),
    }),
});
