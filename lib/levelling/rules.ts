import type { Outlook } from "./outlook";

/** A priority rule gives each node a key: least goes first. */
export interface Rule {
  readonly name: string;
  readonly key: (outlook: Outlook, node: number) => number;
}

/** The rule a careful person would use by hand: earliest due date, then the order of the list. */
export const PLAIN: Rule = { name: "plain", key: ({ due }, node) => due[node]! };

/** Further rules of the literature (Kolisch 1996; Vepsalainen & Morton 1987 for the cost of tardiness). */
export const RULES: readonly Rule[] = [
  { name: "latest start", key: ({ latest, length }, node) => latest[node]! - length[node]! },
  { name: "latest finish", key: ({ latest }, node) => latest[node]! },
  { name: "least slack", key: ({ latest, length, earliest }, node) => latest[node]! - length[node]! - earliest[node]! },
  { name: "weighted due", key: ({ due, weight }, node) => due[node]! / (1 + weight[node]!) },
  { name: "tardiness cost", key: tardinessCost },
  { name: "shortest weighted", key: ({ length, weight }, node) => length[node]! / Math.max(1e-3, weight[node]!) },
  { name: "longest tail", key: ({ tail }, node) => -tail[node]! },
  { name: "most followers", key: ({ followers }, node) => -followers[node]! },
  { name: "greatest demand", key: ({ demand, latest, length }, node) => latest[node]! - length[node]! - demand[node]! },
];

/** Apparent tardiness cost at the earliest start, with a look-ahead of three lengths. */
function tardinessCost({ latest, length, weight, earliest }: Outlook, node: number): number {
  const own = Math.max(1, length[node]!);
  const slack = Math.max(0, latest[node]! - own - earliest[node]!);
  return -(weight[node]! / own) * Math.exp(-slack / (3 * own));
}
