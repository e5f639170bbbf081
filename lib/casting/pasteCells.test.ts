import { describe, expect, it } from "vitest";
import type { GridColumn, GridRow } from "./castingGrid";
import { performerMeant, performersLike } from "./findPerformer";
import { pasteCells, pastedBlock } from "./pasteCells";

const performers = [
  { code: "ines", name: "Ines Falk" },
  { code: "ruth", name: "Ruth Amsel" },
  { code: "inga-roe", name: "Inga Roë" },
];
const names = (typed: string) => performersLike(typed, performers).map(({ code }) => code);
const rows: readonly GridRow[] = [
  { role: "queen", place: 1, places: 1 },
  { role: "reeds", place: null, places: 3 },
  { role: "snow", place: 1, places: 2 },
  { role: "snow", place: 2, places: 2 },
];
const columns: readonly GridColumn[] = [
  { cast: "first", standing: "cast" },
  { cast: "first", standing: "cover" },
];
const paste = (text: string, row = 0, column = 0) => {
  const { changes, problems } = pasteCells(pastedBlock(text), { row, column }, rows, columns, performers);
  return [...changes.map((one) => `${one.cast} ${one.role} ${one.place} ${one.standing}: ${one.performers?.join("+")}`), ...problems];
};

describe("finding a performer", () => {
  it("looks at the beginnings of words, whatever their case and accents, first names first", () => {
    expect(names("in")).toEqual(["ines", "inga-roe"]);
    expect(names("roe")).toEqual(["inga-roe"]);
    expect(names("AM")).toEqual(["ruth"]);
    expect(names("x")).toEqual([]);
    expect(names("")).toHaveLength(3);
  });

  it("takes a name, a code or a beginning that fits one, and says who else it may be", () => {
    expect(performerMeant("Ruth Amsel", performers)).toMatchObject({ ok: true, value: { code: "ruth" } });
    expect(performerMeant("inga-roe", performers)).toMatchObject({ ok: true });
    expect(performerMeant("fal", performers)).toMatchObject({ ok: true, value: { code: "ines" } });
    expect(performerMeant("in", performers)).toEqual({ ok: false, error: '"in" may be Ines Falk or Inga Roë.' });
    expect(performerMeant("Bo", performers)).toEqual({ ok: false, error: 'Nobody is called "Bo".' });
  });
});

describe("pasting a block", () => {
  it("lays rows on rows and cells on cells from the cell in hand", () => {
    expect(paste("Ruth Amsel\tines; inga\r\n", 2)).toEqual(["first snow 1 cast: ruth", "first snow 1 cover: ines+inga-roe"]);
    expect(paste("ruth\nines", 2)).toEqual(["first snow 1 cast: ruth", "first snow 2 cast: ines"]);
  });

  it("steps over folded rows, and fills the places of a folded row it begins on", () => {
    expect(paste("ruth\nines")).toEqual(["first queen 1 cast: ruth", "first snow 1 cast: ines"]);
    expect(paste("ruth\n\ninga", 1)).toEqual(["first reeds 1 cast: ruth", "first reeds 2 cast: ", "first reeds 3 cast: inga-roe"]);
  });

  it("says what it cannot place, and changes nothing for it", () => {
    expect(paste("bo\truth\tines", 3)).toEqual(["first snow 2 cover: ruth", 'Nobody is called "bo".', '"ines" lies outside the grid.']);
    expect(paste("ruth; ines", 0)).toEqual(['"ruth; ines" names more than one: one dances a place.']);
  });
});
