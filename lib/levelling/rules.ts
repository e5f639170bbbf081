import type { Outlook } from "./outlook";

/** A priority rule gives each node a key: least goes first. */
export interface Rule {
  readonly name: string;
  readonly key: (outlook: Outlook, node: number) => number;
}

/** The rule a careful person would use by hand: earliest due date, then the order of the list. */
export const PLAIN: Rule = { name: "plain", key: ({ due }, node) => due[node]! };

/** Further rules of the literature (Kolisch 1996). */
export const RULES: readonly Rule[] = [
  { name: "latest start", key: ({ latest, length }, node) => latest[node]! - length[node]! },
  { name: "latest finish", key: ({ latest }, node) => latest[node]! },
  { name: "least slack", key: ({ latest, length, earliest }, node) => latest[node]! - length[node]! - earliest[node]! },
  { name: "weighted due", key: ({ due, weight }, node) => due[node]! / (1 + weight[node]!) },
  { name: "shortest weighted", key: ({ length, weight }, node) => length[node]! / Math.max(1e-3, weight[node]!) },
  { name: "longest tail", key: ({ tail }, node) => -tail[node]! },
  { name: "most followers", key: ({ followers }, node) => -followers[node]! },
  { name: "greatest demand", key: ({ demand, latest, length }, node) => latest[node]! - length[node]! - demand[node]! },
];
