import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { faultText } from "#lib/exchange/fault";
import { smallStaging } from "#lib/staging/fixtures";
import type { Staging } from "#lib/staging/staging";
import { applyChanges } from "./applyChanges";
import { changesBetween } from "./changesBetween";
import type { RowChange } from "./edit";
import { inverse, overTheirs } from "./inverse";
import { rowOf, rowsOf } from "./rows";

const staging = smallStaging();
const applied = (before: Staging, changes: readonly RowChange[]) => {
  const result = applyChanges(before, changes);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};
const refusal = (before: Staging, changes: readonly RowChange[]) => {
  const result = applyChanges(before, changes);
  return result.ok ? null : result.error;
};
const faults = (changes: readonly RowChange[]) => {
  const refused = refusal(staging, changes);
  return refused?.kind === "faults" ? refused.faults.map(faultText) : refused;
};
const change = (file: string, name: string, cells: Readonly<Record<string, string>>): RowChange => {
  const before = rowOf(staging, file, name);
  return { file, before, after: { ...before, ...cells } };
};

describe("changed rows", () => {
  it("are read as an import reads them, and kept as the files write them", () => {
    const { staging: after, changes } = applied(staging, [change("milestones.csv", "dress", { at: "10:00", date: "10 March 2027" })]);
    expect(after.milestones[0]).toMatchObject({ at: 600, date: "2027-03-10" });
    expect(changes[0]?.after).toMatchObject({ at: "10:00", date: "2027-03-10", code: "dress" });
  });

  it("keep their places when the cells that name them change", () => {
    const [first] = rowsOf(staging, "casting.csv");
    const { staging: after } = applied(staging, [{ file: "casting.csv", before: first!, after: { ...first, performer: "ruth" } }]);
    expect(after.casting.map(({ performer }) => performer).slice(0, 3)).toEqual(["ruth", null, "ruth"]);
  });

  it("that change nothing are left out", () => {
    expect(applied(staging, [change("makers.csv", "orla", { productive: "85 %" })]).changes).toEqual([]);
  });

  it("have a fault for each cell that cannot be read, and for what no longer agrees", () => {
    expect(faults([change("makers.csv", "orla", { productive: "lots", skills: "knitting=100%" })])).toEqual([
      expect.stringMatching(/^makers.csv:2:skills: "knitting" is not/),
      expect.stringMatching(/^makers.csv:2:productive: /),
    ]);
    expect(faults([{ file: "makers.csv", before: rowOf(staging, "makers.csv", "orla"), after: null }])).toEqual([
      'absences.csv:3:maker: "orla" is not in makers.csv. Add a row for it there.',
    ]);
    expect(faults([{ file: "machines.csv", before: null, after: rowOf(staging, "machines.csv", "room") }])).toEqual([
      "machines.csv:3:code: Row 2 has the same code. Give one of them another.",
    ]);
  });

  it("leave the production its code and its workroom", () => {
    expect(faults([change("production.csv", "mg", { code: "other" })])).toEqual([
      'production.csv:2:code: The code of a production stays: it was "mg". Bring the staging in as another production instead.',
    ]);
  });

  it("say how money is written from then on", () => {
    const { staging: after } = applied(staging, [change("production.csv", "mg", { currency: "JPY", budget: "42000" })]);
    expect(after.production).toMatchObject({ currency: "JPY", budget: 42_000 });
  });
});

describe("a row that is not what it was", () => {
  const seen = rowOf(staging, "makers.csv", "orla");
  const now = applied(staging, [change("makers.csv", "orla", { trade: "cutter" })]).staging;
  const mine: RowChange = { file: "makers.csv", before: seen, after: { ...seen, name: "Orla V." } };

  it("is a conflict that shows theirs", () => {
    expect(refusal(now, [mine])).toEqual({ kind: "conflict", conflicts: [{ mine, theirs: rowOf(now, "makers.csv", "orla") }] });
  });

  it("can be changed over theirs, once seen", () => {
    const refused = refusal(now, [mine]);
    const over = overTheirs([mine], refused?.kind === "conflict" ? refused.conflicts : []);
    expect(applied(now, over).staging.makers[0]).toMatchObject({ name: "Orla V.", trade: "tutu maker" });
  });

  it("is a conflict without theirs when it is gone", () => {
    const [closed] = rowsOf(staging, "absences.csv");
    const gone = applied(staging, [{ file: "absences.csv", before: closed!, after: null }]).staging;
    expect(refusal(gone, [{ file: "absences.csv", before: closed!, after: { ...closed, reason: "feast" } }])).toMatchObject({
      conflicts: [{ theirs: null }],
    });
  });
});

describe("changes between two stagings", () => {
  /** Any staging made of the small one by leaving out, changing and shuffling rows that nothing refers to, and by recasting. */
  const anyNext = fc
    .record({
      calls: fc.shuffledSubarray([...staging.calls, ...staging.calls, { ...staging.calls[0]!, from: 660 }]),
      absences: fc.shuffledSubarray([...staging.absences]),
      scenes: fc.shuffledSubarray([...staging.scenes], { minLength: 2 }),
      measurements: fc.shuffledSubarray([...staging.measurements]),
      casting: fc.shuffledSubarray([...staging.casting], { minLength: staging.casting.length }),
      recast: fc.constantFrom("ines", "ruth", "bo"),
      name: fc.constantFrom("Orla Venn", "Orla"),
    })
    .map(({ recast, name, casting, ...parts }) => ({
      ...staging,
      ...parts,
      casting: casting.map((place) => (place.cast === "second" && place.role === "queen" ? { ...place, performer: recast } : place)),
      makers: staging.makers.map((maker) => ({ ...maker, name })),
    }));

  it("make the one into the other, and inverted bring the one back", () => {
    void fc.assert(
      fc.property(anyNext, anyNext, (one, other) => {
        const there = applied(one, changesBetween(one, other));
        expect(there.staging).toEqual(other);
        const back = applied(there.staging, inverse(there.changes));
        expect(back.staging).toEqual(one);
        expect(applied(back.staging, inverse(back.changes)).staging).toEqual(other);
      }),
    );
  });

  it("are none between a staging and itself", () => {
    void fc.assert(fc.property(anyNext, (one) => changesBetween(one, structuredClone(one)).length === 0));
  });
});
