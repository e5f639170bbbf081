import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { COLUMNS, type ColumnId, USUAL_COLUMNS } from "./garmentColumns";
import { FACET_IDS, given, readQuery, writeQuery } from "./garmentQuery";
import { GARMENT_STATES } from "./garmentRow";

const ids = COLUMNS.map(({ id }) => id);
const inOrder = (show: readonly ColumnId[]) => ids.filter((id) => show.includes(id));

describe("the address", () => {
  it("reads back as it was written", () => {
    fc.assert(
      fc.property(
        fc.record({
          find: fc.string({ maxLength: 100 }),
          state: fc.constantFrom(...GARMENT_STATES, "" as const),
          only: fc.dictionary(fc.constantFrom(...FACET_IDS), fc.string({ minLength: 1, maxLength: 100 }), { noNullPrototype: true }),
          group: fc.constantFrom(...FACET_IDS, "state" as const, "" as const),
          sort: fc.constantFrom(...ids),
          down: fc.boolean(),
          show: fc.subarray(ids, { minLength: 1 }).map(inOrder),
          page: fc.integer({ min: 1, max: 999_999 }),
        }),
        (query) => {
          expect(readQuery(given(new URLSearchParams(writeQuery(query)).entries()))).toEqual(query);
        },
      ),
    );
  });

  it("reads nonsense as nothing", () =>
    expect(readQuery({ sort: "constructor", state: "toString", group: "x", show: "y", page: "-1", nobody: "1" })).toEqual(readQuery({})));

  it("takes the last of several sorts, since a press stands after the one in force", () =>
    expect(readQuery({ sort: ["name", "-minutes"] })).toMatchObject({ sort: "minutes", down: true }));

  it("takes columns one by one, as a form sends them, or all in one", () => {
    expect(readQuery({ show: ["state", "number"] }).show).toEqual(["number", "state"]);
    expect(readQuery({ show: "state,number" }).show).toEqual(["number", "state"]);
    expect(readQuery({}).show).toEqual(USUAL_COLUMNS);
  });
});
