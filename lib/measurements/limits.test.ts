import { describe, expect, it } from "vitest";
import { LENGTH_PER_INCH, LENGTH_PER_MM } from "#lib/units/quantities";
import { isPlausible, limitsOf } from "./limits";
import { MEASUREMENTS } from "./measurement";

/**
 * Least and greatest of 6,068 adults in millimetres: ANSUR II, 2012 survey of the US Army (work of the US Government, public release).
 * Its waist height is taken at the navel and its sleeve at the outseam, near enough to ours for a limit.
 */
const SURVEY = [
  ["height", 1409, 1993],
  ["bust", 695, 1469],
  ["waist", 611, 1379],
  ["hip", 737, 1341],
  ["thigh", 412, 870],
  ["calf", 266, 523],
  ["neck", 275, 514],
  ["head", 500, 635],
  ["shoulder", 107, 185],
  ["napeToWaist", 345, 598],
  ["girth", 1342, 1991],
  ["insideLeg", 610, 1031],
  ["waistToFloor", 805, 1245],
  ["armToWrist", 410, 709],
  ["shoe", 198, 323],
] as const;

describe("limits of measurements", () => {
  it.each(SURVEY)("hold everybody's %s in the survey", (name, least, most) => {
    expect(isPlausible(name, least * LENGTH_PER_MM)).toBe(true);
    expect(isPlausible(name, most * LENGTH_PER_MM)).toBe(true);
  });

  it("catch inches read as centimetres, and centimetres as inches, in a waist of 62 cm", () => {
    expect(isPlausible("waist", 24.5 * 10 * LENGTH_PER_MM)).toBe(false);
    expect(isPlausible("waist", 62 * LENGTH_PER_INCH)).toBe(false);
  });

  it("rise from least to most", () => {
    for (const name of MEASUREMENTS) expect(limitsOf(name).least, name).toBeLessThan(limitsOf(name).most);
  });
});
