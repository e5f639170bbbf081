import { describe, expect, it } from "vitest";
import { garmentsOf } from "#lib/casting/garments";
import { faultText } from "#lib/exchange/fault";
import { edited, smallStaging } from "#lib/staging/fixtures";
import { pastedTexts, sheetFrom } from "./pastedSheet";
import { sheetsOf, withSheet } from "./sheets";
import { wantedOf } from "./wanted";

const staging = smallStaging();
const inch = 2032;
const written = { lengths: "in", currency: "GBP" } as const;
const pasted = (text: string) => {
  const texts = pastedTexts(text);
  if (!texts.ok) return texts.error.map(faultText);
  const sheet = sheetFrom(texts.value, "ines", written);
  return sheet.ok ? sheet.value : sheet.error.map(faultText);
};

describe("the sheets of a performer", () => {
  it("stand newest first", () => {
    expect(sheetsOf(staging, "ines").map(({ taken }) => taken)).toEqual(["2027-01-14", "2026-01-10"]);
    expect(sheetsOf(staging, "bo")).toEqual([]);
  });

  it("get one more, and one of the same day gives way", () => {
    const [newest] = sheetsOf(staging, "ines");
    const cold = { ...newest!, body: "cold" } as const;
    expect(sheetsOf(withSheet(staging, cold), "ines").map(({ body }) => body)).toEqual(["cold", "cold"]);
    expect(sheetsOf(withSheet(staging, { ...cold, taken: staging.production.starts }), "ines")).toHaveLength(3);
  });
});

describe("what a performer's garments ask for", () => {
  const cut = JSON.parse(
    JSON.stringify(staging.constructions).replaceAll("10 in * layers", "body.hip * layers + body.napeToWaist + body.bust"),
  );
  const made = { ...staging, constructions: cut };
  const wanted = (performer: string) =>
    wantedOf(made, garmentsOf(made), performer).map(({ measurement, garments, from }) => [measurement, garments.join(" "), from]);

  it("is on the sheet, or stands on the size group, or on nothing", () => {
    expect(wanted("ines")).toEqual([
      ["bust", "MG 001", "nowhere"],
      ["hip", "MG 001", "sheet"],
      ["napeToWaist", "MG 001", "size group"],
    ]);
  });

  it("is nothing for who is only fitted to a garment, or whose garment is not made here", () => expect(wanted("ruth")).toEqual([]));
});

describe("a row pasted from a spreadsheet", () => {
  it("is read by its headings, as the file or the screen spells them", () => {
    expect(pasted("Date\tWaist\tnape_to_waist\tInseam\tState\n14 January 2027\t24 1/2\t38.7 cm\t\twarm\n")).toEqual({
      of: { performer: "ines" },
      taken: "2027-01-14",
      body: "warm",
      values: { waist: 24.5 * inch, napeToWaist: 387 * 80 },
    });
  });

  it("is read in the order of the sheet without headings", () => {
    expect(pasted("2027-01-14\tcold\t65 in\t34")).toMatchObject({ body: "cold", values: { height: 65 * inch, bust: 34 * inch } });
  });

  it("tells each cell that cannot be read, and each heading that is not known", () => {
    expect(pasted("taken\twaist\thip\n2027-01-14\ttwenty\t240 cm")).toEqual([
      'pasted row:waist: "twenty" is not a length. Write it like 15 1/4 in, 15 1/4", 38.7 cm, 5 ft 3 in, 1 yd 6 in or 2 m.',
      expect.stringContaining('pasted row:hip: "240 cm" is no body\'s'),
    ]);
    expect(pasted("taken\twiast\twaist\twaist\n1\t2\t3\t4")).toEqual([
      'pasted row:1:wiast: No measurement has this name. Did you mean "waist"?',
      "pasted row:1:waist: It stands there twice. Keep one of the two columns.",
    ]);
    expect(pasted("  \n")).toEqual([expect.stringContaining("Nothing was pasted.")]);
    expect(pasted("taken\n2027-01-14")).toEqual([expect.stringContaining("No measurement is filled in.")]);
  });

  it("reads back what the file writes", () => {
    const text = edited("measurements.csv", "W10", "W10")["measurements.csv"]!.split("\n");
    const [heads, , row] = text.map((line) => line.replaceAll('"', "").replace("91,5", "91.5").split(","));
    const without = (cells: readonly string[]) => cells.slice(2).join("\t");
    expect(pasted(`${without(heads!)}\n${without(row!)}`)).toEqual(sheetsOf(staging, "ines")[0]);
  });
});
