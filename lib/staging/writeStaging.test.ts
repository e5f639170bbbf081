import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plainDate } from "#lib/calendar/days";
import { SKILLS } from "#lib/labour/skills";
import { limitsOf } from "#lib/measurements/limits";
import { MEASUREMENTS } from "#lib/measurements/measurement";
import { smallStaging } from "./fixtures";
import { readStaging } from "./readStaging";
import type { Staging } from "./staging";
import { writeStaging } from "./writeStaging";

const staging = smallStaging();
const readBack = (written: Staging) => {
  const read = readStaging(writeStaging(written));
  return read.ok ? read.value : read.error;
};

const text = fc.string({ unit: "grapheme", maxLength: 30 }).map((each) => each.trim().replace(/^'+(?=[=+\-@])/, ""));
const day = fc.integer({ min: 0, max: 60_000 }).map(plainDate);
const share = fc.nat(1000);
const figures = fc.record(
  Object.fromEntries(MEASUREMENTS.map((name) => [name, fc.integer({ min: limitsOf(name).least, max: limitsOf(name).most })])),
  { requiredKeys: [] },
);

describe("writeStaging", () => {
  it("writes files that read back to the same staging", () => expect(readBack(staging)).toEqual(staging));

  it("guards a cell that a spreadsheet would run", () => {
    expect(writeStaging(staging).get("stock.csv")).toContain("'=two rows of bars");
  });

  it("keeps whatever lengths, money, shares, days and words there are", () => {
    fc.assert(
      fc.property(
        fc.record({ name: text.filter((each) => each !== ""), note: text, colour: text }),
        figures,
        fc.record({
          skills: fc.dictionary(fc.constantFrom(...SKILLS), share),
          productive: share,
          cost: fc.nat(1_000_000),
          minutes: fc.nat(5000),
        }),
        day,
        fc.constantFrom("in" as const, "cm" as const),
        (words, values, maker, date, lengths) => {
          const changed: Staging = {
            ...staging,
            production: { ...staging.production, lengths, starts: date, budget: maker.cost },
            measurements: [{ of: { performer: "ines" }, taken: date, body: "cold", values }],
            makers: staging.makers.map((each) => ({
              ...each,
              name: words.name,
              skills: maker.skills,
              productive: maker.productive,
              reservedMinutesPerWeek: maker.minutes,
              costPerHour: maker.cost,
              starts: date,
            })),
            lots: staging.lots.map((lot) => ({ ...lot, quantity: maker.cost, location: words.note })),
            materials: staging.materials.map((material) => ({ ...material, colour: words.colour, spare: maker.productive })),
          };
          expect(readBack(changed)).toEqual(changed);
        },
      ),
      { numRuns: 30 },
    );
  });
});
