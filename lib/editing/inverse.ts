import type { RowChange, RowConflict } from "./edit";

/** The changes that take these back. */
export const inverse = (changes: readonly RowChange[]): readonly RowChange[] =>
  changes.map(({ before, after, ...rest }) => ({ ...rest, before: after, after: before }));

/** The same changes made over what others have made of the rows since; what they have taken out is added again. */
export const overTheirs = (changes: readonly RowChange[], conflicts: readonly RowConflict[]): readonly RowChange[] =>
  changes.flatMap((change) => {
    const conflict = conflicts.find(({ mine }) => sameChange(mine, change));
    if (!conflict) return [change];
    return conflict.theirs === null && change.after === null ? [] : [{ ...change, before: conflict.theirs }];
  });

const sameChange = (one: RowChange, other: RowChange): boolean => JSON.stringify(one) === JSON.stringify(other);
