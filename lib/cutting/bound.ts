/** The material bound L1: all pieces laid end to end. No plan uses fewer stocks. */
export const materialBound = (lengths: readonly number[], stock: number): number =>
  Math.ceil(lengths.reduce((sum, length) => sum + length, 0) / stock);

/**
 * The bound L2 (Martello & Toth 1990, "Lower bounds and reduction procedures for the bin packing problem"; from memory). For each small
 * length k, pieces longer than half a stock need one each, and pieces of at least k may fill only what those leave over.
 */
export const stocksBound = (lengths: readonly number[], stock: number): number => {
  const smallest = new Set([0, ...lengths.filter((length) => 2 * length <= stock)]);
  let best = materialBound(lengths, stock);
  for (const k of smallest) {
    let alone = 0;
    let shared = 0;
    let left = 0;
    let filling = 0;
    for (const length of lengths) {
      if (length > stock - k) alone++;
      else if (2 * length > stock) {
        shared++;
        left += stock - length;
      } else if (length >= k) filling += length;
    }
    best = Math.max(best, alone + shared + Math.max(0, Math.ceil((filling - left) / stock)));
  }
  return best;
};
