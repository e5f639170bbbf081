import { describe, expect, it } from "vitest";
import { recast } from "#lib/casting/recast";
import { smallStaging } from "#lib/staging/fixtures";
import { castingInput, changedSince, readRecasts } from "./castingInput";
import { NO_PLACE, seenCells } from "./seenCells";

const staging = smallStaging();
const cell = { cast: "first", role: "snow", place: 2, standing: "cast" as const };
const read = (fields: Readonly<Record<string, unknown>>) => {
  const input = castingInput.safeParse({ production: "mg", ...fields });
  if (!input.success) return "cannot be read";
  const changes = readRecasts(input.data, staging);
  return changes.ok
    ? changes.value.map(({ role, place, performers }) => `${role} ${place}: ${performers?.join("+") ?? "none"}`)
    : changes.error;
};
const ofCell = (performer: unknown) => read({ ...cell, place: "2", performer });

describe("what changes the casting", () => {
  it("is a cell's form: somebody, nobody yet, several who stand by, or no place at all", () => {
    expect(ofCell("bo")).toEqual(["snow 2: bo"]);
    expect(ofCell("")).toEqual(["snow 2: "]);
    expect(ofCell(["bo", "ruth"])).toEqual(["snow 2: bo+ruth"]);
    expect(ofCell(NO_PLACE)).toEqual(["snow 2: none"]);
  });

  it("is a list of names from a place on", () => {
    const list = { cast: "first", role: "snow", standing: "cast", from: "1" };
    expect(read({ ...list, names: "Bo Hallam\r\n\r\n" })).toEqual(["snow 1: bo"]);
    expect(read({ ...list, names: "\nBo Hallam" })).toEqual(["snow 1: ", "snow 2: bo"]);
    expect(read({ ...list, names: "Bo Hallam\nIda" })).toBe('Nobody is called "Ida".');
    expect(read({ ...list, from: "2", names: "bo\nines" })).toBe("snow has no place 3.");
  });

  it("is what the grid sends, and nothing that it would not", () => {
    expect(read({ changes: JSON.stringify([{ ...cell, performers: ["bo"] }]) })).toEqual(["snow 2: bo"]);
    expect(read({ changes: JSON.stringify([{ ...cell, performers: ["stranger"] }]) })).toBe('Nobody is called "stranger".');
    for (const bad of ["[]", "{}", "no JSON", JSON.stringify([{ ...cell, place: 0, performers: [] }])])
      expect(read({ changes: bad })).toBe("There is nothing to change.");
  });
});

describe("cells that somebody else has changed since", () => {
  const seen = JSON.stringify(seenCells(staging, [cell, cell]));

  it("are none while they are as they were seen, whatever else has changed", () => {
    expect(JSON.parse(seen)).toHaveLength(1);
    expect(changedSince(seen, recast(staging, [{ ...cell, place: 1, performers: ["bo"] }]))).toBeNull();
  });

  it("are told with what they are now", () => {
    const theirs = recast(staging, [{ ...cell, performers: ["bo"] }]);
    expect(changedSince(seen, theirs)).toContain("Theirs: Snow 2, first: Bo Hallam.");
  });
});
