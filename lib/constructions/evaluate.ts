import { failed, ok, type Result } from "#lib/result";
import { LENGTH_UNITS } from "#lib/units/lengthUnits";
import type { BinaryOperator, Expression, FormulaFault } from "./expression";

/** A length is a number in `Length`, not yet rounded. */
export type Value = number | boolean | string;
export type Values = ReadonlyMap<string, Value>;

type Worked = Result<Value, FormulaFault>;

/**
 * Works out a formula whose units have been checked. Only the branch that `if`, `and`, `or` choose is worked, so a division can be guarded.
 * Dividing by nothing, a number too large and a value that is not there are faults, never NaN.
 */
export const evaluate = (tree: Expression, values: Values): Worked => {
  switch (tree.kind) {
    case "number":
    case "word":
      return ok(tree.value);
    case "length":
      return ok(tree.value * LENGTH_UNITS[tree.unit].length);
    case "name": {
      const value = values.get(tree.name);
      return value === undefined ? failed({ at: tree.at, problem: `${tree.name} has no value.`, mend: "Give it one." }) : ok(value);
    }
    case "unary": {
      const of = evaluate(tree.of, values);
      if (!of.ok) return of;
      return ok(tree.operator === "not" ? of.value !== true : 0 - Number(of.value));
    }
    case "binary":
      return binary(tree, values);
    case "call":
      return call(tree, values);
  }
};

const binary = (tree: Expression & { readonly kind: "binary" }, values: Values): Worked => {
  const left = evaluate(tree.left, values);
  if (!left.ok) return left;
  if ((tree.operator === "and" && left.value === false) || (tree.operator === "or" && left.value === true)) return left;
  const right = evaluate(tree.right, values);
  if (!right.ok) return right;
  if (tree.operator === "/" && right.value === 0)
    return failed({
      at: tree.at,
      problem: "Division by nothing.",
      mend: "Guard it with if, or ask for more than 0 in the limits of the parameter.",
    });
  const value = OPERATIONS[tree.operator](left.value, right.value);
  return typeof value === "number" && !Number.isFinite(value)
    ? failed({ at: tree.at, problem: "The number is too large.", mend: "Check the figures." })
    : ok(value);
};

const OPERATIONS: Readonly<Record<BinaryOperator, (a: Value, b: Value) => Value>> = {
  and: (_, b) => b,
  or: (_, b) => b,
  "=": (a, b) => a === b,
  "!=": (a, b) => a !== b,
  "<": (a, b) => a < b,
  "<=": (a, b) => a <= b,
  ">": (a, b) => a > b,
  ">=": (a, b) => a >= b,
  "+": (a, b) => Number(a) + Number(b),
  "-": (a, b) => Number(a) - Number(b),
  "*": (a, b) => Number(a) * Number(b),
  "/": (a, b) => Number(a) / Number(b),
};

/** Binary fractions leave dust: 12 x 1/12 in must not round up to the next whole number. */
const DUST = 1e-9;

const call = (tree: Expression & { readonly kind: "call" }, values: Values): Worked => {
  if (tree.function === "if") {
    const condition = evaluate(tree.of[0]!, values);
    return condition.ok ? evaluate(tree.of[condition.value === true ? 1 : 2]!, values) : condition;
  }
  const of: number[] = [];
  for (const argument of tree.of) {
    const value = evaluate(argument, values);
    if (!value.ok) return value;
    of.push(Number(value.value));
  }
  const first = of[0] ?? 0;
  switch (tree.function) {
    case "min":
      return ok(Math.min(...of));
    case "max":
      return ok(Math.max(...of));
    case "ceil":
      return ok(Math.ceil(first - DUST));
    case "floor":
      return ok(Math.floor(first + DUST));
    case "round":
      return ok(Math.floor(first + 0.5 + DUST));
  }
};
