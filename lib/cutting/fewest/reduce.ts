import type { CutJob, CutStocks } from "./job";

/** Stocks that some best plan holds, and what is left to cut. */
export interface Reduced {
  readonly settled: readonly CutStocks[];
  readonly left: readonly number[];
}

/**
 * Settles stocks that lose nothing (the dominance of Martello & Toth 1990, "Lower bounds and reduction procedures for the bin packing
 * problem"; from memory): a piece that no other fits beside, and a pair that fills its stock or beside whose longer piece no two shorter
 * would fit. Whatever lay beside the longer piece can change places with the partner and never needs more room.
 */
export const reduce = ({ stock, lengths, counts }: CutJob): Reduced => {
  const left = [...counts];
  const settled: CutStocks[] = [];
  for (let place = 0; place < lengths.length; place++) {
    while (left[place]! > 0) {
      const room = stock - lengths[place]!;
      left[place]!--;
      const partner = lengths.findIndex((length, at) => left[at]! > 0 && length <= room);
      if (partner === -1) {
        settled.push({ cuts: [[place, 1]], times: 1 });
        continue;
      }
      if (lengths[partner] !== room && twoShortest(lengths, left) <= room) {
        left[place]!++;
        break;
      }
      left[partner]!--;
      settled.push({
        cuts:
          partner === place
            ? [[place, 2]]
            : partner < place
              ? [
                  [partner, 1],
                  [place, 1],
                ]
              : [
                  [place, 1],
                  [partner, 1],
                ],
        times: 1,
      });
    }
  }
  return { settled, left };
};

const twoShortest = (lengths: readonly number[], left: readonly number[]): number => {
  let sum = 0;
  let needed = 2;
  for (let place = lengths.length - 1; place >= 0 && needed > 0; place--) {
    const taken = Math.min(needed, left[place]!);
    sum += taken * lengths[place]!;
    needed -= taken;
  }
  return needed > 0 ? Number.POSITIVE_INFINITY : sum;
};
