import * as z from "zod";
import { codeText, someText } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

export const sizes = stagingFile({
  name: "sizes.csv",
  about:
    "Size groups: where a place not yet cast, or a measurement not yet taken, gets its figures from. Their figures stand in measurements.csv.",
  key: ["code"],
  schema: () =>
    z.object({
      code: column(codeText(), { meaning: "Short name, used by performers, casting and measurements", example: "W10" }),
      name: column(someText(), { meaning: "Name on screens and lists", example: "Women, medium" }),
    }),
});
