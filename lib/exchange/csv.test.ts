import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCsv } from "./readCsv";
import { writeCsv } from "./writeCsv";

const table = (text: string) => {
  const read = readCsv("pieces.csv", text);
  return read.ok ? { headings: read.value.headings, rows: read.value.rows.map(({ row, cells }) => [row, ...cells]) } : read.error;
};
const expected = { headings: ["code", "depth"], rows: [[2, "a", '15 1/4"']] };

describe("reading CSV", () => {
  it.each([
    ["commas", 'code,depth\na,"15 1/4"""\n'],
    ["CRLF and a byte-order mark", '\uFEFFcode,depth\r\na,"15 1/4"""\r\n'],
    ["semicolons", 'code;depth\na;15 1/4"\n'],
    ["tabs", 'code\tdepth\na\t15 1/4"'],
    ["columns without a heading at the end", 'code,depth,,\na,15 1/4",,\n'],
  ])("survives %s", (_, text) => expect(table(text)).toEqual(expected));

  it("keeps the rows of the spreadsheet over empty lines and cells of several lines", () => {
    expect(table('code,note\n\na,"one\ntwo"\n,\nb,three')).toEqual({
      headings: ["code", "note"],
      rows: [
        [3, "a", "one\ntwo"],
        [5, "b", "three"],
      ],
    });
  });

  it("is not misled by separators inside a quoted heading", () => {
    expect(table('"a;b;c",d\n1,2')).toEqual({ headings: ["a;b;c", "d"], rows: [[2, "1", "2"]] });
  });

  it.each([
    ["nothing", " \n,\n", null, "The file is empty."],
    ["a quote left open", 'code,depth\na,"15', 2, "The quotes do not match."],
    ["a row too wide", "code,depth\na,15,25", 2, "The row has more cells than the 2 headings."],
    ["over 10 MB", `code\n${"x".repeat(10_000_000)}`, null, "The file is larger than 10 MB."],
    ["over 20,000 rows", `code\n${"x\n".repeat(20_001)}`, null, "The file has more than 20,000 rows."],
    ["endless empty lines", `code\n${"\n".repeat(50_000)}x`, null, "The file has more than 20,000 rows."],
  ])("refuses %s", (_, text, row, problem) => expect(table(text)).toMatchObject([{ file: "pieces.csv", row, problem }]));

  it("takes 20,000 rows", () => {
    const read = readCsv("calls.csv", `code\n${"x\n".repeat(20_000)}`);
    expect(read.ok && read.value.rows.length).toBe(20_000);
  });
});

describe("writing CSV", () => {
  it("guards formulas and leaves plain numbers alone", () => {
    expect(writeCsv(["note"], [["=1+1"], ["+44"], ["-7,5"], ["-x"], ["@home"], ["'=x"]])).toBe(
      "note\r\n'=1+1\r\n+44\r\n\"-7,5\"\r\n'-x\r\n'@home\r\n''=x\r\n",
    );
  });

  it("begins with a byte-order mark when asked", () => expect(writeCsv(["a"], [], true)).toBe("\uFEFFa\r\n"));

  it("reads back what it wrote", () => {
    const cell = fc.oneof(
      fc.string().map((text) => text.trim()),
      fc.constantFrom("=A1", "'=A1", "''x", "-", "+1", "a,b", 'say "no"', "one\ntwo", "one\r\ntwo", ";", "\u00e9\ud83e\ude70"),
    );
    const row = fc.tuple(cell, cell, fc.constantFrom("x", "-1"));
    fc.assert(
      fc.property(fc.array(row), fc.boolean(), (rows, bom) => {
        const read = readCsv("x.csv", writeCsv(["one", "two", "three"], rows, bom));
        expect(read.ok && read.value.rows.map(({ cells }) => cells)).toEqual(rows);
      }),
      { numRuns: 300 },
    );
  });
});
