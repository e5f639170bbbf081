import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkUnits, type Scope } from "./checkUnits";
import { evaluate, type Value } from "./evaluate";
import { type BinaryOperator, type Expression, LITERAL_UNITS, type Unit } from "./expression";
import { parseExpression } from "./parseExpression";
import { printExpression } from "./printExpression";

/** A tree with its places taken away, so that only its sense is compared. */
const bare = (tree: Expression): unknown => JSON.parse(JSON.stringify(tree, (key, value) => (key === "at" ? undefined : value)));

const number = fc.nat(10_000).map((tenths): Expression => ({ at: 1, kind: "number", value: tenths / 10 }));
const length = fc
  .tuple(fc.nat(10_000), fc.constantFrom(...LITERAL_UNITS))
  .map(([tenths, unit]): Expression => ({ at: 1, kind: "length", value: tenths / 10, unit }));
const name = fc.constantFrom("hooks", "body.hip", "net.strip", "in").map((text): Expression => ({ at: 1, kind: "name", name: text }));
const word = fc.constantFrom("none", "single wire").map((value): Expression => ({ at: 1, kind: "word", value }));
const operators: readonly BinaryOperator[] = ["or", "and", "=", "!=", "<", "<=", ">", ">=", "+", "-", "*", "/"];
const { tree: anyTree } = fc.letrec<{ tree: Expression }>((again) => ({
  tree: fc.oneof(
    { maxDepth: 5, withCrossShrink: true },
    fc.oneof(number, length, name, word),
    fc
      .tuple(fc.constantFrom(...operators), again("tree"), again("tree"))
      .map(([operator, left, right]): Expression => ({ at: 1, kind: "binary", operator, left, right })),
    fc
      .tuple(fc.constantFrom("-" as const, "not" as const), again("tree"))
      .map(([operator, of]): Expression => ({ at: 1, kind: "unary", operator, of })),
    fc
      .tuple(fc.constantFrom("min" as const, "ceil" as const, "if" as const), fc.array(again("tree"), { minLength: 1, maxLength: 3 }))
      .map(([called, of]): Expression => ({ at: 1, kind: "call", function: called, of })),
  ),
}));

const UNITS: Readonly<Record<string, Unit>> = { n: "count", r: "ratio", l: "length", t: "truth" };
const scope: Scope = new Map(Object.entries(UNITS).map(([code, unit]) => [code, { unit, words: [] }]));
const unitOf = (text: string) => {
  const tree = parseExpression(text);
  const checked = tree.ok ? checkUnits(tree.value, scope) : tree;
  return checked.ok ? checked.value.unit : `at ${checked.error.at}: ${checked.error.problem}`;
};
const work = (text: string, values: Readonly<Record<string, Value>> = {}) => {
  const tree = parseExpression(text);
  if (!tree.ok) return `at ${tree.error.at}: ${tree.error.problem}`;
  const worked = evaluate(tree.value, new Map(Object.entries(values)));
  return worked.ok ? worked.value : `at ${worked.error.at}: ${worked.error.problem}`;
};

describe("reading and printing", () => {
  it("agree: what is printed is read as the same tree, whenever it is short enough to be read", () => {
    fc.assert(
      fc.property(anyTree, (tree) => {
        const text = printExpression(tree);
        const read = parseExpression(text);
        if (text.length <= 500) expect(read.ok && bare(read.value)).toEqual(bare(tree));
      }),
    );
  });

  it("keep the sense of brackets and print none that is not needed", () => {
    for (const text of ["a - (b - c)", "a - b - c", "-(a + b) * 2", "not (a and b) or c", "min(a, (1 in)) "]) {
      const read = parseExpression(text);
      expect(read.ok && printExpression(read.value)).toBe(text.replace("(1 in)", "1 in").trim());
    }
  });
});

describe("units", () => {
  it("never add a length to a number, whichever side it stands on", () => {
    expect(unitOf("n + l")).toBe('at 3: "+" cannot join a count and a length.');
    expect(unitOf("1 in - r")).toBe('at 6: "-" cannot join a length and a plain number.');
    expect(unitOf("l < n")).toMatch(/cannot join/);
  });

  it("of a product are those of its parts: numbers scale lengths, areas are refused", () => {
    expect([unitOf("n * n"), unitOf("n * r"), unitOf("l * n"), unitOf("r * l"), unitOf("l / n"), unitOf("l / l"), unitOf("n / n")]).toEqual(
      ["count", "ratio", "length", "length", "length", "ratio", "ratio"],
    );
    expect(unitOf("l * l")).toMatch(/cannot join a length and a length/);
    expect(unitOf("n / l")).toMatch(/cannot join/);
  });

  it("of a sum do not depend on the order of its terms", () => {
    const term = fc.constantFrom("n", "r", "l", "2", "2.5", "3 cm");
    fc.assert(
      fc.property(term, term, (a, b) => {
        const [one, other] = [unitOf(`${a} + ${b}`), unitOf(`${b} + ${a}`)];
        expect(one.startsWith("at") === other.startsWith("at") && (one.startsWith("at") || one === other)).toBe(true);
      }),
    );
  });

  it("turn a ratio into a count only by rounding", () => {
    expect([unitOf("n / 2"), unitOf("ceil(n / 2)"), unitOf("round(l / 1 in)")]).toEqual(["ratio", "count", "count"]);
    expect(unitOf("ceil(l)")).toBe("at 1: ceil cannot take a length.");
  });

  it("ask for a condition in if and one unit in its branches", () => {
    expect(unitOf("if(t, 1 in, l)")).toBe("length");
    expect(unitOf("if(n, 1, 2)")).toMatch(/condition of if cannot take a count/);
    expect(unitOf("if(t, 1, 1 in)")).toMatch(/cannot join/);
  });

  it("name what is not known, and where", () => {
    expect(unitOf("1 + hoks")).toBe("at 5: hoks is not known here.");
  });
});

describe("working a formula out", () => {
  it("follows the usual order and reads lengths exactly", () => {
    expect([
      work("2 + 3 * 4"),
      work("(2 + 3) * 4"),
      work("10 - 4 - 3"),
      work("-2 * 3"),
      work("1 in"),
      work("1 cm"),
      work("1 yd - 36 in"),
    ]).toEqual([14, 20, 3, -6, 2032, 800, 0]);
  });

  it("gives a fault for a division by nothing, never NaN", () => {
    expect(work("4 / n", { n: 0 })).toBe("at 3: Division by nothing.");
    expect(work("if(n = 0, 0, 4 / n)", { n: 0 })).toBe(0);
  });

  it("comes to a finite number or a fault, whatever the figures", () => {
    fc.assert(
      fc.property(fc.nat(50), fc.nat(50), fc.nat(50), (a, b, c) => {
        const worked = work("a / (b - c) * (a - b) / c", { a, b, c });
        expect(typeof worked === "string" || Number.isFinite(worked)).toBe(true);
      }),
    );
  });

  it("rounds without the dust of binary fractions", () => {
    expect([work("ceil(0.1 * 3 / 0.1)"), work("floor(2.9999999999999)"), work("round(2.5)")]).toEqual([3, 3, 3]);
  });

  it("stops at the first sign that makes no sense, and says where", () => {
    expect(work("2 + ")).toBe("at 5: The formula stops too early.");
    expect(work("2 ; 3")).toBe('at 3: ";" means nothing in a formula.');
    expect(work("eval(1)")).toBe("at 1: There is no function eval.");
    expect(work("1 2")).toBe('at 3: "2" cannot stand here.');
    expect(work("(".repeat(80) + ")".repeat(80))).toMatch(/nested too deeply/);
    expect(work("1 + ".repeat(200))).toMatch(/too long/);
  });
});
