import { failed, ok, type Result } from "#lib/result";
import {
  BINDING,
  type BinaryOperator,
  type Expression,
  FORMULA_FUNCTIONS,
  type FormulaFault,
  type FormulaFunction,
  LITERAL_UNITS,
  type LiteralUnit,
  MINUS_BINDING,
  NOT_BINDING,
} from "./expression";
import { type Token, tokensOf } from "./tokens";

type Parsed = Result<Expression, FormulaFault>;

/** Deepest nesting of brackets, functions and signs that is read. */
const DEEPEST = 40;

/**
 * Reads a formula into its tree: numbers, lengths (`1 in`, `2 cm`), words in double quotes, names, + - * /, comparisons, `and`, `or`,
 * `not`, brackets, and min, max, ceil, floor, round, if(condition, then, otherwise). Operators of one rank are worked from the left.
 */
export const parseExpression = (text: string): Parsed => {
  const tokens = tokensOf(text);
  if (!tokens.ok) return tokens;
  const reader = new Reader(tokens.value);
  const tree = reader.expression(1, 0);
  if (!tree.ok) return tree;
  return reader.next.kind === "end" ? tree : unexpected(reader.next);
};

const unexpected = (token: Token): { readonly ok: false; readonly error: FormulaFault } =>
  failed(
    token.kind === "end"
      ? { at: token.at, problem: "The formula stops too early.", mend: "Finish it, or take the last sign away." }
      : { at: token.at, problem: `"${token.text}" cannot stand here.`, mend: "Check the signs and brackets around it." },
  );

class Reader {
  private place = 0;
  constructor(private readonly tokens: readonly Token[]) {}

  get next(): Token {
    return this.tokens[this.place]!;
  }

  private take(): Token {
    const token = this.next;
    this.place++;
    return token;
  }

  private isSign(text: string): boolean {
    return this.next.kind === "sign" && this.next.text === text;
  }

  expression(least: number, depth: number): Parsed {
    if (depth > DEEPEST)
      return failed({ at: this.next.at, problem: "The formula is nested too deeply.", mend: "Say the inner part as a driver of its own." });
    let left = this.start(depth);
    while (left.ok) {
      const operator = operatorOf(this.next);
      if (!operator || BINDING[operator] < least) return left;
      const at = this.take().at;
      const right = this.expression(BINDING[operator] + 1, depth + 1);
      if (!right.ok) return right;
      left = ok({ kind: "binary", operator, left: left.value, right: right.value, at });
    }
    return left;
  }

  private start(depth: number): Parsed {
    const token = this.next;
    if (this.isSign("-")) return this.unary("-", MINUS_BINDING, depth);
    if (token.kind === "name" && token.text === "not") return this.unary("not", NOT_BINDING, depth);
    if (token.kind === "number") return ok(this.number());
    if (token.kind === "word") {
      this.take();
      return ok({ kind: "word", value: token.text.slice(1, -1), at: token.at });
    }
    if (token.kind === "name" && !operatorOf(token)) return this.name(depth);
    if (this.isSign("(")) {
      this.take();
      const inner = this.expression(1, depth + 1);
      return inner.ok ? this.closed(inner) : inner;
    }
    return unexpected(token);
  }

  private unary(operator: "-" | "not", binding: number, depth: number): Parsed {
    const { at } = this.take();
    const of = this.expression(binding, depth + 1);
    return of.ok ? ok({ kind: "unary", operator, of: of.value, at }) : of;
  }

  private number(): Expression {
    const token = this.take();
    const unit = this.next;
    if (unit.kind !== "name" || !isUnit(unit.text)) return { kind: "number", value: Number(token.text), at: token.at };
    this.take();
    return { kind: "length", value: Number(token.text), unit: unit.text, at: token.at };
  }

  private name(depth: number): Parsed {
    const token = this.take();
    if (!this.isSign("(")) return ok({ kind: "name", name: token.text, at: token.at });
    if (!isFunction(token.text))
      return failed({ at: token.at, problem: `There is no function ${token.text}.`, mend: `There are ${FORMULA_FUNCTIONS.join(", ")}.` });
    this.take();
    const of: Expression[] = [];
    do {
      if (of.length > 0) this.take();
      const argument = this.expression(1, depth + 1);
      if (!argument.ok) return argument;
      of.push(argument.value);
    } while (this.isSign(","));
    return this.closed(ok({ kind: "call", function: token.text, of, at: token.at }));
  }

  private closed(inner: Parsed): Parsed {
    if (!this.isSign(")")) return unexpected(this.next);
    this.take();
    return inner;
  }
}

const operatorOf = (token: Token): BinaryOperator | null =>
  (token.kind === "sign" || token.kind === "name") && Object.hasOwn(BINDING, token.text) ? (token.text as BinaryOperator) : null;

const isUnit = (text: string): text is LiteralUnit => (LITERAL_UNITS as readonly string[]).includes(text);
const isFunction = (text: string): text is FormulaFunction => (FORMULA_FUNCTIONS as readonly string[]).includes(text);
