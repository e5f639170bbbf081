const parts = (number: string): readonly [string, number] | null => {
  const found = /^(.*?)(\d+)$/.exec(number);
  return found ? [found[1] ?? "", Number(found[2])] : null;
};

const follows = (before: string, number: string): boolean => {
  const [a, b] = [parts(before), parts(number)];
  return a !== null && b !== null && a[0] === b[0] && a[1] + 1 === b[1];
};

/** Numbers of garments in as few stretches as they make, in the order given; each of them once. */
export const numberRanges = (numbers: readonly string[]): readonly (readonly string[])[] => {
  const ranges: string[][] = [];
  for (const number of new Set(numbers)) {
    const open = ranges.at(-1);
    if (open && follows(open.at(-1) as string, number)) open.push(number);
    else ranges.push([number]);
  }
  return ranges;
};

/** `WL 003–005`: what follows the dash is the last number without what both begin with. */
export const rangeText = (range: readonly string[]): string => {
  const [first = "", last = first] = [range[0], range.at(-1)];
  return range.length < 2 ? first : `${first}–${last.slice(parts(first)?.[0].length ?? 0)}`;
};
