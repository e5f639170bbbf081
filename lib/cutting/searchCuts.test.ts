import fc from "fast-check";
import loadHighs from "highs";
import { beforeAll, describe, expect, it } from "vitest";
import { checkCutting } from "./checkCutting";
import type { OpenProgram } from "./fewest/coverProgram";
import { highsProgram } from "./fewest/highsProgram";
import { type Goods, layOut } from "./layOut";
import type { Piece } from "./pieces";
import { type CutAnswer, type CutQuestion, questionName } from "./question";
import { checkAnswer, searchCuts } from "./searchCuts";

let open: OpenProgram;
beforeAll(async () => {
  open = highsProgram(await loadHighs());
});

const goods: Goods = { material: "ROD", set: null, lot: null, cuttable: null, stock: 100, kerf: 0, keep: null, turned: false };
const piece = (length: number, breadth: number | null = null): Piece => ({
  garment: "LM 1",
  label: `${length} x ${breadth}`,
  length,
  breadth,
});

/** As far as it gets in so many steps; every step judged. */
const searched = (question: CutQuestion, steps: number): CutAnswer => {
  const search = searchCuts(question, open);
  let step = search.next();
  for (let at = 0; ; at++) {
    expect(checkAnswer(question, step.value)).toEqual([]);
    if (step.done || at === steps) break;
    step = search.next();
  }
  search.return(step.value);
  return step.value;
};

const needsOf = (pieces: readonly Piece[]) =>
  pieces.map(({ garment, label, length, breadth }) => ({
    ...{ garment, role: "x", label: { uk: "x", us: "x" }, material: "ROD", measure: "length" as const, quantity: length },
    ...{ cuts: [{ label, length, breadth, count: 1 }], oneLotSet: null, operation: "cut", arithmetic: "" },
  }));

describe("a search for better cutting", () => {
  it("proves what no rule can, and the plan says so", () => {
    // Four pieces of 22 come out of a rod of 100, so nine take three rods; by length two rods and a bit would do.
    const pieces = Array.from({ length: 9 }, () => piece(22));
    const plan = layOut(pieces, goods)!;
    expect(plan).toMatchObject({ count: 3, bound: 2, proved: false, effort: "at once" });
    const answer = searched(plan.question!, 500);
    expect(answer).toMatchObject({ used: 3, bound: 3 });
    expect(layOut(pieces, goods, () => answer)).toMatchObject({ count: 3, bound: 3, proved: true, effort: "searched", question: null });
  });

  it("never gives a plan that uses more, and every plan passes the check", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 5, max: 60 }), fc.integer({ min: 5, max: 50 })), { minLength: 1, maxLength: 14 }),
        fc.constantFrom(
          goods,
          { ...goods, kerf: 2 },
          { ...goods, cuttable: 54, stock: null },
          { ...goods, cuttable: 54, stock: null, turned: true },
        ),
        (sizes, cloth) => {
          const pieces = sizes.map(([length, breadth]) => piece(length, cloth.cuttable === null ? null : breadth));
          const plan = layOut(pieces, cloth)!;
          const answer = plan.question ? searched(plan.question, 20) : null;
          const better = layOut(pieces, cloth, () => answer)!;
          expect(checkCutting(better, needsOf(pieces), cloth.cuttable, cloth.turned)).toEqual([]);
          expect(better.count).toBeLessThanOrEqual(plan.count);
          if (cloth.stock === null) expect(better.used).toBeLessThanOrEqual(plan.used);
          if (answer) expect(better.effort).toBe("searched");
        },
      ),
      { numRuns: 60 },
    );
  });

  it("is asked the same for alike jobs, whatever the order and the names", () => {
    const name = (lengths: readonly number[]) =>
      questionName(
        layOut(
          lengths.map((length) => piece(length)),
          goods,
        )!.question!,
      );
    const lengths = [22, 22, 22, 22, 96, 22, 22, 22, 22, 22];
    expect(name(lengths)).toBe(name(lengths.toReversed()));
  });

  it("finds fault with an answer to another question, a false bound, and pieces left out", () => {
    const question: CutQuestion = {
      kind: "stocks",
      stock: 10,
      lengths: [
        [6, 2],
        [4, 2],
      ],
    };
    const right: CutAnswer = {
      kind: "stocks",
      used: 2,
      bound: 2,
      patterns: [
        {
          count: 2,
          cuts: [
            [6, 1],
            [4, 1],
          ],
        },
      ],
    };
    expect(checkAnswer(question, right)).toEqual([]);
    expect(checkAnswer(question, { ...right, bound: 3 })).toEqual(["The bound 3 is above the 2 used."]);
    expect(checkAnswer(question, { ...right, patterns: [{ count: 2, cuts: [[6, 1]] }] })).toEqual(["Of 4, 2 too few."]);
    const strip: CutAnswer = { kind: "strip", used: 4, bound: 4, placed: [[0, 0, 4, 4]] };
    expect(checkAnswer(question, strip)).toEqual(["The answer is to another question."]);
    expect(checkAnswer({ kind: "strip", width: 5, turned: false, pieces: [[4, 4, 1]] }, strip)).toEqual([]);
    expect(checkAnswer({ kind: "strip", width: 3, turned: false, pieces: [[4, 4, 1]] }, strip)).toEqual(["Piece 0 lies off the roll."]);
  });
});
