import * as z from "zod";
import { emptyMeans, orNull } from "../cells/cell";
import { wholeNumber } from "../cells/numbers";
import { codeText, oneOf } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

export const casting = stagingFile({
  name: "casting.csv",
  about:
    "Who dances which place of a role in which cast, and who covers it. A place not yet cast has a row with its size group and no performer.",
  key: ["cast", "role", "place", "standing", "performer"],
  schema: () =>
    z.object({
      cast: column(codeText(), { meaning: "Name of the cast", example: "first" }),
      role: column(codeText(), { meaning: "Role danced", example: "snow", refersTo: "roles" }),
      place: column(emptyMeans(wholeNumber(1, 200), 1), { meaning: "Which body of the role", unit: "count", example: "3", empty: "1" }),
      performer: column(orNull(codeText()), { meaning: "Who dances it", example: "ines", empty: "not yet cast", refersTo: "performers" }),
      sizeGroup: column(orNull(codeText()), {
        meaning: "Size group the place stands on",
        example: "W10",
        empty: "that of the performer",
        refersTo: "sizes",
      }),
      standing: column(emptyMeans(oneOf(["cast", "cover"]), "cast"), {
        meaning: "cast dances it; cover (understudy) stands by",
        example: "cast",
        empty: "cast",
      }),
    }),
});
