import { faultIn, type Rule } from "./rule";

/** A staging is of one production. */
export const productionRule: Rule = ({ production }) => {
  if (production.length === 1) return [];
  return production.length === 0
    ? [faultIn("production.csv", null, null, "There is no production.", "Give production.csv one row below its headings.")]
    : production.slice(1).map(({ row }) => faultIn("production.csv", row, null, "There is more than one production.", "Keep one row."));
};
