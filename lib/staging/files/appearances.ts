import * as z from "zod";
import { codeText } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

export const appearances = stagingFile({
  name: "appearances.csv",
  about: "Which role is seen in which scene, in which costume.",
  key: ["role", "scene", "costume"],
  schema: () =>
    z.object({
      role: column(codeText(), { meaning: "Role", example: "snow", refersTo: "roles" }),
      scene: column(codeText(), { meaning: "Scene", example: "snowfall", refersTo: "scenes" }),
      costume: column(codeText(), { meaning: "Costume worn", example: "snow-white", refersTo: "costumes" }),
    }),
});
