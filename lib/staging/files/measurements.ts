import * as z from "zod";
import { MEASUREMENTS, type Measurement } from "#lib/measurements/measurement";
import type { Length } from "#lib/units/quantities";
import type { LengthSystem } from "#lib/units/showLength";
import { words } from "#lib/words/words";
import { type Cell, emptyMeans, orNull } from "../cells/cell";
import { length } from "../cells/numbers";
import { day } from "../cells/times";
import { codeText, oneOf } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

const tapes = (system: LengthSystem): Record<Measurement, Cell<Length | null>> => {
  const labels = words("uk").measurements;
  const cells = MEASUREMENTS.map((name) => [
    name,
    column(orNull(length(system)), {
      meaning: labels[name],
      unit: "length",
      example: name === "waist" ? "24 1/2" : "38.7 cm",
      empty: "not taken",
    }),
  ]);
  return Object.fromEntries(cells);
};

export const measurements = stagingFile({
  name: "measurements.csv",
  about:
    "Measurement sheets, one a row: of a performer, or the figures a size group stands for. Personal data: keep the file where few can read it.",
  key: ["performer", "sizeGroup", "taken"],
  schema: ({ lengths }) =>
    z.object({
      performer: column(orNull(codeText()), {
        meaning: "Who was measured",
        example: "ines",
        empty: "the row is of a size group",
        refersTo: "performers",
      }),
      sizeGroup: column(orNull(codeText()), {
        meaning: "Size group the row stands for",
        example: "W10",
        empty: "the row is of a performer",
        refersTo: "sizes",
      }),
      taken: column(day(), { meaning: "Day it was taken", unit: "day", example: "2027-01-14" }),
      body: column(emptyMeans(oneOf(["cold", "warm", "not noted"]), "not noted"), {
        meaning: "State of the body: cold, warm or not noted",
        example: "warm",
        empty: "not noted",
      }),
      ...tapes(lengths),
    }),
});
