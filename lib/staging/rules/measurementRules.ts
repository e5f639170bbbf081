import { faultIn, type Rule } from "./rule";

/** A sheet is of a performer or of a size group, never both. */
export const measurementRules: Rule = ({ measurements }) =>
  measurements.flatMap(({ row, values: { performer, sizeGroup } }) => {
    if (performer === undefined || sizeGroup === undefined || (performer === null) !== (sizeGroup === null)) return [];
    const problem = performer === null ? "The sheet is of nobody." : "The sheet is of a performer and of a size group at once.";
    return [faultIn("measurements.csv", row, "performer", problem, "Fill in performer or size_group, one of the two.")];
  });
