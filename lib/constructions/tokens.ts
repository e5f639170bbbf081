import { failed, ok, type Result } from "#lib/result";
import type { FormulaFault } from "./expression";

export interface Token {
  readonly kind: "number" | "word" | "name" | "sign" | "end";
  readonly text: string;
  readonly at: number;
}

/** Longest formula that is read: a longer one is better said as two drivers. */
const LONGEST_FORMULA = 500;

const SHAPES: readonly (readonly [Token["kind"], RegExp])[] = [
  ["number", /^\d{1,15}(?:\.\d{1,15})?/],
  ["word", /^"[^"]*"/],
  ["name", /^[A-Za-z][A-Za-z0-9]*(?:\.[A-Za-z][A-Za-z0-9]*)?/],
  ["sign", /^(?:<=|>=|!=|[-+*/()<>=,])/],
];

/** Cuts a formula into its smallest parts; the last one is always the end. */
export const tokensOf = (text: string): Result<readonly Token[], FormulaFault> => {
  if (text.length > LONGEST_FORMULA)
    return failed({ at: LONGEST_FORMULA, problem: "The formula is too long.", mend: "Say part of it as a driver of its own." });
  const tokens: Token[] = [];
  let place = 0;
  while (place < text.length) {
    const rest = text.slice(place);
    const space = /^\s+/.exec(rest);
    if (space) {
      place += space[0].length;
      continue;
    }
    const token = shapeAt(rest, place + 1);
    if (!token)
      return failed({
        at: place + 1,
        problem: `"${rest[0]}" means nothing in a formula.`,
        mend: "Write numbers, names, words in double quotes, and + - * / ( ) = != < <= > >= , only.",
      });
    tokens.push(token);
    place += token.text.length;
  }
  tokens.push({ kind: "end", text: "", at: text.length + 1 });
  return ok(tokens);
};

const shapeAt = (rest: string, at: number): Token | null => {
  for (const [kind, shape] of SHAPES) {
    const found = shape.exec(rest);
    if (found) return { kind, text: found[0], at };
  }
  return null;
};
