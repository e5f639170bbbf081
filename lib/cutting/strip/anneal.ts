import type { Chance } from "#lib/levelling/random";
import { emptyLie, type Frame, type Lie, type Sides, skyline } from "./skyline";

/** Orders tried in one annealing, and the heat at its start as a part of the mean area of a piece. */
const TRIES = 4000;
const HEAT = 0.5;
const COLD = 0.01;
/** Pieces looked at between two yields, so that whoever runs this can stop in a few milliseconds. */
const WORK = 500_000;

/**
 * Simulated annealing over the order in which pieces are offered to the skyline: two pieces change places, and the area left out of the
 * frame must fall to nothing. Null when it does not.
 */
export function* anneal(sides: Sides, frame: Frame, first: Int32Array, chance: Chance): Generator<void, Lie | null> {
  const order = first.slice();
  const size = order.length;
  const lie = emptyLie(size);
  let left = skyline(sides, order, frame, lie);
  if (left === 0) return lie;
  const mean = order.reduce((sum, piece) => sum + sides.across[piece]! * sides.up[piece]!, 0) / size;
  const pause = Math.max(1, Math.floor(WORK / (size * size)));
  for (let tries = 0; tries < TRIES; tries++) {
    const heat = mean * HEAT * (COLD / HEAT) ** (tries / TRIES);
    const a = chance.below(size);
    const b = chance.below(size);
    if (a === b) continue;
    const swap = () => {
      const kept = order[a]!;
      order[a] = order[b]!;
      order[b] = kept;
    };
    swap();
    const now = skyline(sides, order, frame, lie);
    if (now === 0) return lie;
    if (now <= left || chance.next() < Math.exp((left - now) / heat)) left = now;
    else swap();
    if (tries % pause === 0) yield;
  }
  return null;
}
