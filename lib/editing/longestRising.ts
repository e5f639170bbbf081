/** Places of a longest rising run (its members need not be neighbours) of numbers; nulls are passed over. */
export const longestRising = (numbers: readonly (number | null)[]): ReadonlySet<number> => {
  // Place of the least last number of a run of each length, and the place before each in its run.
  const ends: number[] = [];
  const before: (number | undefined)[] = [];
  for (const [place, number] of numbers.entries()) {
    if (number === null) continue;
    let low = 0;
    let high = ends.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (numbers[ends[middle]!]! < number) low = middle + 1;
      else high = middle;
    }
    before[place] = ends[low - 1];
    ends[low] = place;
  }
  const run = new Set<number>();
  for (let place = ends.at(-1); place !== undefined; place = before[place]) run.add(place);
  return run;
};
