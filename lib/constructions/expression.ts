/** A formula as a tree. `at` is the 1-based place of the part in the text, for faults. */
export type Expression = { readonly at: number } & (
  | { readonly kind: "number"; readonly value: number }
  | { readonly kind: "length"; readonly value: number; readonly unit: LiteralUnit }
  /** A word in double quotes: an option of a choice. */
  | { readonly kind: "word"; readonly value: string }
  | { readonly kind: "name"; readonly name: string }
  | { readonly kind: "unary"; readonly operator: UnaryOperator; readonly of: Expression }
  | { readonly kind: "binary"; readonly operator: BinaryOperator; readonly left: Expression; readonly right: Expression }
  | { readonly kind: "call"; readonly function: FormulaFunction; readonly of: readonly Expression[] }
);

export const LITERAL_UNITS = ["mm", "cm", "m", "in", "ft", "yd"] as const;
export type LiteralUnit = (typeof LITERAL_UNITS)[number];

export const FORMULA_FUNCTIONS = ["min", "max", "ceil", "floor", "round", "if"] as const;
export type FormulaFunction = (typeof FORMULA_FUNCTIONS)[number];

type UnaryOperator = "-" | "not";
export type BinaryOperator = "or" | "and" | "=" | "!=" | "<" | "<=" | ">" | ">=" | "+" | "-" | "*" | "/";

/** How tightly an operator binds; `not` stands between `and` and the comparisons, a leading minus above all. */
export const BINDING: Readonly<Record<BinaryOperator, number>> = {
  or: 1,
  and: 2,
  "=": 4,
  "!=": 4,
  "<": 4,
  "<=": 4,
  ">": 4,
  ">=": 4,
  "+": 5,
  "-": 5,
  "*": 6,
  "/": 6,
};
export const NOT_BINDING = 3;
export const MINUS_BINDING = 7;

/** What a formula may come to. A count is whole; a ratio is any plain number; a word is an option of a choice. */
export type Unit = "count" | "ratio" | "length" | "truth" | "word";

/** What is wrong with a formula, and where. */
export interface FormulaFault {
  /** 1-based place in the text. */
  readonly at: number;
  readonly problem: string;
  readonly mend: string;
}
