import { describe, expect, it } from "vitest";
import { z } from "zod";
import { asSeen, editFields, jsonOf } from "./editInput";

describe("what a form sends besides its own fields", () => {
  it("is read, and what is no JSON or of another shape is refused and not thrown", () => {
    const read = (fields: object) => editFields.safeParse({ production: "mg", ...fields });
    expect(read({}).data).toMatchObject({ step: "keep", was: [] });
    expect(read({ was: '[{"file":"makers.csv","row":{"code":"orla"}}]' }).data?.was).toEqual([
      { file: "makers.csv", row: { code: "orla" } },
    ]);
    for (const was of ["no JSON", "{}", '[{"file":"makers.csv"}]', "[1]"]) expect(read({ was }).success).toBe(false);
    expect(read({ over: '{"title":"","changes":[]}' }).success).toBe(false);
    expect(jsonOf(z.string()).safeParse("3").success).toBe(false);
  });
});

describe("an edit as it was seen", () => {
  it("is made against the row the person saw, not the row as it is", () => {
    const now = { code: "orla", name: "Orla", trade: "cutter" };
    const seen = { code: "orla", name: "Orla", trade: "tutu maker" };
    const edit = { title: "Orla", changes: [{ file: "makers.csv", before: now, after: { ...now, name: "Orla V." } }] };
    expect(asSeen(edit, [{ file: "makers.csv", row: seen }]).changes[0]).toEqual({ ...edit.changes[0], before: seen });
    expect(asSeen(edit, [{ file: "machines.csv", row: { code: "orla" } }])).toEqual(edit);
  });
});
