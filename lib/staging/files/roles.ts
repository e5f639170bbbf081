import * as z from "zod";
import { wholeNumber } from "../cells/numbers";
import { codeText, oneOf, someText } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

export const roles = stagingFile({
  name: "roles.csv",
  about: "Parts to dance.",
  key: ["code"],
  schema: () =>
    z.object({
      code: column(codeText(), { meaning: "Short name, used by casting, appearances and costumes", example: "snow" }),
      name: column(someText(), { meaning: "Name on screens and lists", example: "Snow Maidens" }),
      kind: column(oneOf(["principal", "soloist", "corps", "character"]), {
        meaning: "principal, soloist, corps or character",
        example: "corps",
      }),
      places: column(wholeNumber(1, 200), { meaning: "How many dance it at once", unit: "count", example: "8" }),
    }),
});
