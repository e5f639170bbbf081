import type { Chance } from "#lib/levelling/random";
import { MEASUREMENTS, type Measurement } from "#lib/measurements/measurement";
import { EVERYBODY, SIZES, type Size } from "./people";

/** A sheet of every size group, then of everybody: warm, in the week before the first day, in half centimetres as a tape is read. */
export const measurementRows = (chance: Chance): (readonly string[])[] => [
  ["performer", "size_group", "taken", "body", ...MEASUREMENTS.map(heading)],
  ...SIZES.map((size) => ["", size.code, "2026-09-01", "not noted", ...figures(size, () => size.scale)]),
  ...EVERYBODY.map(({ code, size }) => [
    code,
    "",
    "2027-01-07",
    "warm",
    ...figures(size, () => size.scale * (0.985 + 0.03 * chance.next())),
  ]),
];

const heading = (name: Measurement): string => name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

const figures = ({ median }: Size, scale: () => number): string[] =>
  MEASUREMENTS.map((name) => (median[name] === 0 ? "" : `${Math.round(2 * median[name] * scale()) / 2} cm`));
