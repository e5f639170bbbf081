/**
 * First-fit decreasing: longest first, each piece into the first stock with room for it, else into a new one. Returns the indices of the
 * pieces in each stock. Alike lengths keep their order, so that the same pieces always give the same plan.
 *
 * Never more than 11/9 of the fewest stocks + 6/9 (Dósa 2007, "The tight bound of first fit decreasing bin-packing algorithm is
 * FFD(I) <= 11/9 OPT(I) + 6/9"; from memory).
 *
 * @throws RangeError for a piece longer than the stock: whoever calls must have looked.
 */
export const firstFitDecreasing = (lengths: readonly number[], stock: number): readonly (readonly number[])[] => {
  const order = lengths.map((_, index) => index).sort((a, b) => lengths[b]! - lengths[a]! || a - b);
  const bins: number[][] = [];
  const room: number[] = [];
  for (const index of order) {
    const length = lengths[index]!;
    if (length > stock) throw new RangeError(`A piece of ${length} is longer than the stock of ${stock}.`);
    const found = room.findIndex((left) => left >= length);
    if (found === -1) {
      bins.push([index]);
      room.push(stock - length);
    } else {
      bins[found]!.push(index);
      room[found]! -= length;
    }
  }
  return bins;
};
