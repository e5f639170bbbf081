import { failed, ok, type Result } from "#lib/result";
import type { Expression, FormulaFault, Unit } from "./expression";

/** What a formula comes to; `words` are all it may say when it is a word. */
export interface UnitOf {
  readonly unit: Unit;
  readonly words: readonly string[];
}
/** Names a formula may use. */
export type Scope = ReadonlyMap<string, UnitOf>;

type Checked = Result<UnitOf, FormulaFault>;

export const UNIT_WORDS: Readonly<Record<Unit, string>> = {
  count: "a count",
  ratio: "a plain number",
  length: "a length",
  truth: "yes or no",
  word: "a word",
};

/**
 * The unit of a formula, or the first thing in it that makes no sense: a length added to a count, an unknown name, a choice compared with a
 * word that is none of its options. Count and ratio mix into ratio; length / length is a ratio; areas are not known.
 */
export const checkUnits = (tree: Expression, scope: Scope): Checked => {
  switch (tree.kind) {
    case "number":
      return plainUnit(Number.isInteger(tree.value) ? "count" : "ratio");
    case "length":
      return plainUnit("length");
    case "word":
      return ok({ unit: "word", words: [tree.value] });
    case "name": {
      const known = scope.get(tree.name);
      if (known) return ok(known);
      return fault(tree, `${tree.name} is not known here.`, `Known are ${[...scope.keys()].sort().join(", ")}.`);
    }
    case "unary": {
      const of = checkUnits(tree.of, scope);
      if (!of.ok) return of;
      if (tree.operator === "not") return of.value.unit === "truth" ? of : wrong(tree, "not", of.value);
      return isNumber(of.value) ? of : wrong(tree, "a minus sign", of.value);
    }
    case "binary":
      return checkBinary(tree, scope);
    case "call":
      return checkCall(tree, scope);
  }
};

const checkBinary = (tree: Expression & { readonly kind: "binary" }, scope: Scope): Checked => {
  const left = checkUnits(tree.left, scope);
  if (!left.ok) return left;
  const right = checkUnits(tree.right, scope);
  if (!right.ok) return right;
  const [a, b] = [left.value, right.value];
  const bothPlain = isPlain(a) && isPlain(b);
  switch (tree.operator) {
    case "and":
    case "or":
      return a.unit === "truth" && b.unit === "truth" ? left : together(tree, a, b);
    case "=":
    case "!=":
      if (a.unit === "word" && b.unit === "word" && !a.words.some((word) => b.words.includes(word)))
        return fault(tree, `${a.words.join(", ")} can never be ${b.words.join(", ")}.`, "Write one of the options of the choice.");
      return common(a, b) ? plainUnit("truth") : together(tree, a, b);
    case "<":
    case "<=":
    case ">":
    case ">=":
      return common(a, b) && isNumber(a) ? plainUnit("truth") : together(tree, a, b);
    case "+":
    case "-": {
      const unit = common(a, b);
      return unit && isNumber(a) ? plainUnit(unit) : together(tree, a, b);
    }
    case "*":
      if (bothPlain) return plainUnit(a.unit === "count" && b.unit === "count" ? "count" : "ratio");
      return (a.unit === "length" && isPlain(b)) || (isPlain(a) && b.unit === "length") ? plainUnit("length") : together(tree, a, b);
    case "/":
      if (bothPlain || (a.unit === "length" && b.unit === "length")) return plainUnit("ratio");
      return a.unit === "length" && isPlain(b) ? plainUnit("length") : together(tree, a, b);
  }
};

const checkCall = (tree: Expression & { readonly kind: "call" }, scope: Scope): Checked => {
  const of: UnitOf[] = [];
  for (const argument of tree.of) {
    const checked = checkUnits(argument, scope);
    if (!checked.ok) return checked;
    of.push(checked.value);
  }
  const [first, second, third] = of;
  switch (tree.function) {
    case "ceil":
    case "floor":
    case "round":
      if (of.length !== 1 || !first) return fault(tree, `${tree.function} takes one number.`, `Write ${tree.function}(number).`);
      return isPlain(first) ? plainUnit("count") : wrong(tree, tree.function, first, "Divide it by a length first, for example 1 in.");
    case "if": {
      if (of.length !== 3 || !first || !second || !third)
        return fault(tree, "if takes three parts.", "Write if(condition, then, otherwise).");
      if (first.unit !== "truth") return wrong(tree, "the condition of if", first);
      const unit = common(second, third);
      return unit ? ok({ unit, words: [...new Set([...second.words, ...third.words])] }) : together(tree, second, third);
    }
    case "min":
    case "max": {
      let unit: Unit | null = first && isNumber(first) ? first.unit : null;
      for (const each of of) unit = unit && common({ unit, words: [] }, each);
      return unit ? plainUnit(unit) : fault(tree, `${tree.function} compares different things.`, "Give it numbers of one unit.");
    }
  }
};

const plainUnit = (unit: Unit): Checked => ok({ unit, words: [] });
const isPlain = (of: UnitOf): boolean => of.unit === "count" || of.unit === "ratio";
const isNumber = (of: UnitOf): boolean => isPlain(of) || of.unit === "length";
const common = (a: UnitOf, b: UnitOf): Unit | null => {
  if (a.unit === b.unit) return a.unit;
  return isPlain(a) && isPlain(b) ? "ratio" : null;
};

const fault = (tree: Expression, problem: string, mend: string) => failed({ at: tree.at, problem, mend });
const wrong = (tree: Expression, taker: string, of: UnitOf, mend = "Check the units of its parts.") =>
  fault(tree, `${taker} cannot take ${UNIT_WORDS[of.unit]}.`, mend);
const together = (tree: Expression, a: UnitOf, b: UnitOf) =>
  fault(
    tree,
    `${tree.kind === "binary" ? `"${tree.operator}"` : "if"} cannot join ${UNIT_WORDS[a.unit]} and ${UNIT_WORDS[b.unit]}.`,
    "Give both sides the same unit: multiply by a length, or divide by one (for example 1 in).",
  );
