import { strFromU8, unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import { writeXlsx, type XlsxSheet } from "./writeXlsx";

const table = (rows: XlsxSheet["rows"], name = "garments"): XlsxSheet => ({ name, headings: ["one", "two"], rows });
const opened = async (...sheets: readonly XlsxSheet[]) => {
  const files = unzipSync(await writeXlsx(sheets));
  return { names: Object.keys(files), text: (name: string) => strFromU8(files[name]!) };
};

describe("a workbook", () => {
  it("holds text as text, numbers as numbers, days as days and amounts with their places", async () => {
    const { text } = await opened(
      table([
        ["tutu", 12],
        [{ day: "2027-03-16" as PlainDate }, { amount: 12.5, places: 2 }],
        [null, ""],
      ]),
    );
    const sheet = text("xl/worksheets/sheet1.xml");
    expect(text("xl/sharedStrings.xml")).toContain("<t>tutu</t>");
    expect(sheet).toMatch(/<c r="B2"[^>]*><v>12<\/v>/);
    // Day 46462 of the spreadsheet's calendar, which counts from 1900: 2027-03-16.
    expect(sheet).toMatch(/<c r="A3"[^>]*><v>46462<\/v>/);
    expect(sheet).toMatch(/<c r="B3"[^>]*><v>12.5<\/v>/);
    expect(text("xl/styles.xml")).toContain('formatCode="0.00"');
    expect(sheet).not.toContain('r="A4"');
  });

  it("never runs text as a formula and leaves out what XML cannot hold", async () => {
    const { text } = await opened(table([["=1+1", "a\u0000<b>&\u0007"]]));
    expect(text("xl/worksheets/sheet1.xml")).not.toContain("<f>");
    expect(text("xl/sharedStrings.xml")).toContain("=1+1");
    expect(text("xl/sharedStrings.xml")).toContain("a&lt;b&gt;&amp;");
  });

  it("cuts text off where a cell ends", async () => {
    const { text } = await opened(table([["x".repeat(40_000), ""]]));
    expect(/x+…/.exec(text("xl/sharedStrings.xml"))![0]).toHaveLength(32_767);
  });

  it("names sheets as a spreadsheet allows, each once", async () => {
    const { text } = await opened(table([], "Net: roll/lot?"), table([], "a".repeat(40)), table([], "A".repeat(40)), table([], "[]"));
    const names = [...text("xl/workbook.xml").matchAll(/<sheet [^>]*name="([^"]*)"/g)].map(([, name]) => name);
    expect(names).toEqual(["Net  roll lot", "a".repeat(31), `${"A".repeat(29)} 2`, "Sheet"]);
  });

  it("is the same file for the same tables", async () => {
    const one = await writeXlsx([table([["a", 1]])]);
    await new Promise((resolve) => setTimeout(resolve, 5));
    expect(await writeXlsx([table([["a", 1]])])).toEqual(one);
  });
});
