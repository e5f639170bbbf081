import * as z from "zod";
import { emptyMeans, orNull } from "../cells/cell";
import { anyText, codeText, oneOf, someText } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

export const stock = stagingFile({
  name: "stock.csv",
  about: "Garments the company already has and may pull or alter.",
  key: ["number"],
  schema: () =>
    z.object({
      number: column(codeText(), { meaning: "The company's number, used by pieces", example: "HM 014" }),
      name: column(someText(), { meaning: "Name on lists", example: "White practice tutu" }),
      construction: column(orNull(codeText()), {
        meaning: "How it was made",
        example: "classical-tutu",
        empty: "not known",
        refersTo: "constructions",
      }),
      location: column(anyText(), { meaning: "Where it hangs", example: "rail 12", empty: "not said" }),
      condition: column(emptyMeans(oneOf(["good", "worn", "repair", "retired"]), "good"), {
        meaning: "good, worn, repair or retired",
        example: "worn",
        empty: "good",
      }),
      note: column(anyText(), { meaning: "Anything else", example: "two rows of bars", empty: "none" }),
    }),
});
