import { describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import { outgrowing } from "#lib/questions/growth";
import { ask, askable, small } from "./asked";

const CM = 800;
const OPENING = "2027-03-05" as PlainDate;

/** Sil is a student; sixty days before her sheet of 8 January she was so much smaller round the bust and so much shorter. */
const growing = (bust: number, height: number, before = "2026-11-09") =>
  small(({ performers, measurements }) => {
    const sheet = measurements.find(({ of }) => "performer" in of && of.performer === "sil")!;
    const values = { ...sheet.values, bust: sheet.values.bust! - bust * CM, height: sheet.values.height! - height * CM };
    return {
      performers: performers.map((one) => (one.code === "sil" ? { ...one, minor: true } : one)),
      measurements: [...measurements, { ...sheet, taken: before as PlainDate, values }],
    };
  });

describe("15. Which student will outgrow what before opening?", () => {
  it("none in the small staging: nobody is a student", async () => {
    expect((await ask(15, await askable(await small(), 0))).says).toEqual(["No student is under age: nobody grows."]);
  });

  /** 56 days from the sheet to the opening: 4.5 cm in 60 days is 4.2, and two fingers are 3.5. */
  it("Sil her unitard, when 4.5 cm in sixty days go on for the 56 to the opening", async () => {
    const { outgrown } = outgrowing(await growing(4.5, 0), OPENING);
    expect(outgrown.map(({ performer, measurement, grows }) => [performer, measurement, grows])).toEqual([["sil", "bust", 4.2 * CM]]);
    expect(outgrown[0]?.garments).toContain("WL 009");
  });

  /** 3.7 cm in 60 days is 3.45 in 56; 5 cm of height is 4.67, and a hem has 5. */
  it("nothing by less: 3.7 cm round and 5 cm along stay within what is in hand", async () => {
    expect(outgrowing(await growing(3.7, 5), OPENING)).toMatchObject({ outgrown: [], unknown: [] });
  });

  it("cannot be told from sheets a fortnight apart", async () => {
    expect(outgrowing(await growing(4.5, 0, "2026-12-26"), OPENING)).toMatchObject({ outgrown: [], unknown: ["sil"] });
  });
});
