import * as z from "zod";
import { codeText, someText } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

export const costumes = stagingFile({
  name: "costumes.csv",
  about: "What a role wears in some scenes.",
  key: ["code"],
  schema: () =>
    z.object({
      code: column(codeText(), { meaning: "Short name, used by pieces and appearances", example: "snow-white" }),
      name: column(someText(), { meaning: "Name on screens and lists", example: "Snow, white tutu" }),
      role: column(codeText(), { meaning: "Role that wears it", example: "snow", refersTo: "roles" }),
    }),
});
