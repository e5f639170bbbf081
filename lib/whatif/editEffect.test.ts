import { describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import { edited, smallStaging } from "#lib/staging/fixtures";
import { editEffect } from "./editEffect";

const today = "2027-01-18" as PlainDate;
const before = smallStaging();
const effectOf = (changes: Readonly<Record<string, string>>) => editEffect(before, smallStaging(changes), today);

describe("the effect of an edit", () => {
  it("of nothing is nothing", () => {
    const effect = effectOf({});
    expect(effect).toMatchObject({ changes: [], added: [], gone: [], otherwise: [] });
    expect([effect.work, effect.fittings, effect.free].every((one) => one.before === one.after)).toBe(true);
  });

  it("of another parameter is other work on the garments of the piece", () => {
    const { otherwise, work, free, added, gone } = effectOf(edited("pieces.csv", "layers=8", "layers=10"));
    expect(otherwise).toEqual(["MG 001", "MG 002"]);
    // Two layers more at two likely minutes each, on two skirts.
    expect(work.after - work.before).toBe(8);
    expect([added, gone, free.after - free.before]).toEqual([[], [], 0]);
  });

  it("of one place more is one garment more of each piece worn there", () => {
    const place = {
      ...edited("roles.csv", "snow,Snow,corps,2", "snow,Snow,corps,3"),
      ...edited("casting.csv", "first,queen,1,ruth,,", "first,snow,3,,W10,\nsecond,snow,3,,W10,\nfirst,queen,1,ruth,,"),
    };
    const { added, gone } = effectOf(place);
    expect(added.map(({ piece }) => piece)).toContain("snow-skirt");
    expect(gone).toEqual([]);
  });

  it("of a maker away is so many hours fewer at their pace, and leaves the garments alone", () => {
    // A day of 8 h, of which 85% goes into tasks; the four hours kept back are the last of the week.
    const { free, otherwise } = effectOf(
      edited("absences.csv", ",2027-02-01,,,,holiday", ",2027-02-01,,,,holiday\norla,2027-02-15,,,,leave"),
    );
    expect(free.before - free.after).toBe(8 * 60 * 0.85);
    expect(otherwise).toEqual([]);
  });
});
