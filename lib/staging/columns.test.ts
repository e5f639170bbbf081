import { describe, expect, it } from "vitest";
import { readCell } from "./cells/cell";
import { columnNotes, headingOf, plainHeading } from "./column";
import { FILES } from "./files";

const columns = Object.values(FILES).flatMap((file) =>
  Object.entries(file.schema({ lengths: "in", currency: "GBP" }).shape).map(([key, cell]) => ({
    name: `${file.name}:${headingOf(key)}`,
    cell,
    note: columnNotes.get(cell),
  })),
);

describe("columns of a staging", () => {
  it("are all described, with an example that can be read", () => {
    expect(columns.length).toBeGreaterThan(150);
    for (const { name, cell, note } of columns) {
      expect(note?.meaning, name).toMatch(/\S/);
      expect(readCell(cell, note?.example ?? ""), name).toMatchObject({ ok: true });
    }
  });

  it("may be left empty exactly where it is said what that means", () => {
    // Prices are judged as a whole, by the rule that they begin at 1.
    for (const { name, cell, note } of columns.filter((column) => column.name !== "offers.csv:prices"))
      expect(readCell(cell, "").ok, name).toBe(note?.empty !== undefined);
  });

  it("have headings that no two columns of a file share, however they are spelt", () => {
    for (const file of Object.values(FILES)) {
      const headings = Object.keys(file.schema({ lengths: "in", currency: "GBP" }).shape).map((key) => plainHeading(headingOf(key)));
      expect(new Set(headings).size, file.name).toBe(headings.length);
    }
  });
});
