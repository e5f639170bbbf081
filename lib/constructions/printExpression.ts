import { BINDING, type Expression, MINUS_BINDING, NOT_BINDING } from "./expression";

/** The formula as text, with no bracket that is not needed: reading it gives the same tree. */
export const printExpression = (tree: Expression): string => printed(tree, 0);

const printed = (tree: Expression, least: number): string => {
  switch (tree.kind) {
    case "number":
      return plain(tree.value);
    case "length":
      return `${plain(tree.value)} ${tree.unit}`;
    case "word":
      return `"${tree.value}"`;
    case "name":
      return tree.name;
    case "call":
      return `${tree.function}(${tree.of.map((argument) => printed(argument, 0)).join(", ")})`;
    case "unary": {
      const binding = tree.operator === "-" ? MINUS_BINDING : NOT_BINDING;
      const of = printed(tree.of, binding);
      return bracketed(tree.operator === "-" ? `-${of}` : `not ${of}`, binding < least);
    }
    case "binary": {
      const binding = BINDING[tree.operator];
      return bracketed(`${printed(tree.left, binding)} ${tree.operator} ${printed(tree.right, binding + 1)}`, binding < least);
    }
  }
};

const bracketed = (text: string, needed: boolean): string => (needed ? `(${text})` : text);

const plain = (value: number): string => value.toLocaleString("en-GB", { useGrouping: false, maximumFractionDigits: 15 });
