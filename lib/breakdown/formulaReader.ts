import { evaluate, type Value, type Values } from "#lib/constructions/evaluate";
import type { Expression, FormulaFault } from "#lib/constructions/expression";
import { parseExpression } from "#lib/constructions/parseExpression";
import type { Result } from "#lib/result";

/** Works formulas out; each text is read once. */
export class FormulaReader {
  private readonly trees = new Map<string, Result<Expression, FormulaFault>>();

  tree(text: string): Result<Expression, FormulaFault> {
    const known = this.trees.get(text);
    if (known) return known;
    const read = parseExpression(text);
    this.trees.set(text, read);
    return read;
  }

  work(text: string, values: Values): Result<Value, FormulaFault> {
    const tree = this.tree(text);
    return tree.ok ? evaluate(tree.value, values) : tree;
  }
}

/** Names a formula uses, each once, in order. */
export const namesIn = (tree: Expression): readonly string[] => {
  switch (tree.kind) {
    case "name":
      return [tree.name];
    case "unary":
      return namesIn(tree.of);
    case "binary":
      return [...new Set([...namesIn(tree.left), ...namesIn(tree.right)])];
    case "call":
      return [...new Set(tree.of.flatMap(namesIn))];
    default:
      return [];
  }
};
