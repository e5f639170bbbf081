import * as z from "zod";
import { isPlausible, limitsOf } from "#lib/measurements/limits";
import { MEASUREMENTS, type Measurement } from "#lib/measurements/measurement";
import type { Length } from "#lib/units/quantities";
import { readLength } from "#lib/units/readLength";
import { type LengthSystem, showLength, writeLength } from "#lib/units/showLength";
import { unreadable } from "#lib/units/unreadable";
import { words } from "#lib/words/words";
import { type Cell, cell, emptyMeans, orNull } from "../cells/cell";
import { day } from "../cells/times";
import { codeText, oneOf } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

/** A length a body can have. */
const tape = (name: Measurement, system: LengthSystem): Cell<Length> =>
  cell(
    (text) => {
      const read = readLength(text, system);
      if (!read.ok || isPlausible(name, read.value)) return read;
      const { least, most } = limitsOf(name);
      const limits = `${showLength(least, system)} to ${showLength(most, system)}`;
      return unreadable(`"${text}" is no body's: ${limits} are possible.`, "Check the unit and the column.");
    },
    (value) => writeLength(value, system),
  );

const tapes = (system: LengthSystem): Record<Measurement, Cell<Length | null>> => {
  const labels = words("uk").measurements;
  const cells = MEASUREMENTS.map((name) => {
    const { least, most } = limitsOf(name);
    const example = showLength(Math.round((least + most) / 2), "in");
    return [name, column(orNull(tape(name, system)), { meaning: labels[name], unit: "length", example, empty: "not taken" })] as const;
  });
  return Object.fromEntries(cells) as Record<Measurement, Cell<Length | null>>;
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
