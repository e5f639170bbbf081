import { describe, expect, it } from "vitest";
import { differencesOf } from "#lib/constructions/differences";
import { drafted, withTexts } from "#lib/constructions/draft";
import { withoutRow, withRowActs, withRowCopied } from "#lib/constructions/draftRows";
import { leavesOf } from "#lib/constructions/leaves";
import { readRowAct, writeRowAct } from "#lib/constructions/rowActs";
import { named } from "./library";

const leotard = named("leotard");

describe("a draft of a construction", () => {
  it("stays as it was when every value is put back as its own text", () => {
    const texts = new Map(
      leavesOf(leotard).map(([path, leaf]) => [path, leaf === true ? "yes" : leaf === false ? "no" : String(leaf ?? "")]),
    );
    expect(withTexts(leotard, texts)).toEqual({ construction: leotard, unread: {}, faults: [] });
  });

  it("takes a figure by its path, and names it as the one difference", () => {
    const { construction, faults } = withTexts(leotard, new Map([["operations.0.setupMinutes.2", "999"]]));
    expect(faults).toEqual([]);
    const { code, setupMinutes } = leotard.operations[0]!;
    expect(differencesOf(leotard, construction)).toEqual([
      { where: `operations.${code}.setupMinutes.high`, from: String(setupMinutes[2]), to: "999" },
    ]);
  });

  it("keeps what is no number beside the figure that was there", () => {
    const draft = withTexts(leotard, new Map([["operations.0.setupMinutes.1", "ten"]]));
    expect(draft.construction).toEqual(leotard);
    expect(draft.unread).toEqual({ "operations.0.setupMinutes.1": "ten" });
    expect(draft.faults[0]).toMatchObject({ column: "operations.0.setupMinutes.1", problem: '"ten" is not a number.' });
  });

  it("is judged as a file is: a formula of an unknown name is a fault with its place", () => {
    const { faults } = withTexts(leotard, new Map([["drivers.0.formula", "nothing * 2"]]));
    expect(faults.some(({ column, problem }) => column?.includes(leotard.drivers[0]!.code) && problem.includes("nothing"))).toBe(true);
  });

  it("gives a copied row its own code, and is as before without it", () => {
    const copied = withRowCopied(leotard, "operations", 0);
    expect(copied.faults).toEqual([]);
    expect(copied.construction.operations[1]!.code).toBe(`${leotard.operations[0]!.code}2`);
    expect(withoutRow(copied.construction, "operations", 1)).toEqual(drafted(leotard));
  });

  it("names who still waits for a row taken out", () => {
    const at = leotard.operations.findIndex(({ code }) => leotard.operations.some((one) => one.waitsFor.some(({ on }) => on === code)));
    const { faults } = withoutRow(leotard, "operations", at);
    expect(faults.some(({ problem }) => problem.includes(leotard.operations[at]!.code))).toBe(true);
  });

  it("comes out the same when rows are copied and taken out again, as the acts are written and read", () => {
    const acts = ["copy:needs:0", "drop:needs:1"].map((text) => readRowAct(text)!);
    expect(acts.map(writeRowAct)).toEqual(["copy:needs:0", "drop:needs:1"]);
    expect(withRowActs(leotard, acts)).toEqual(leotard);
    expect(["copy:names:0", "burn:needs:0", "drop:needs:x"].map(readRowAct)).toEqual([null, null, null]);
  });
});
