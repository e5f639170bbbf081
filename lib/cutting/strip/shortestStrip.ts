import { Chance } from "#lib/levelling/random";
import { anneal } from "./anneal";
import { emptyLie, type Lie, type Sides, skyline } from "./skyline";
import type { Placed, StripJob, StripPlan } from "./strip";
import { stripBound } from "./stripBound";

/**
 * The shortest length of roll for the pieces, better step by step and never done before it is proved: whoever runs it stops when there is no
 * more time. Asks again and again for a plan a little shorter than the best, from the cut end up or from one selvedge to the other.
 * The same job and seed always take the same steps.
 *
 * @throws RangeError for a piece broader than the roll: whoever calls must have looked.
 */
export function* shortestStrip(job: StripJob, seed: number): Generator<StripPlan, StripPlan> {
  const { pieces, width, turned } = job;
  if (pieces.some((piece) => (turned ? Math.min(piece.width, piece.height) : piece.width) > width))
    throw new RangeError("A piece is broader than the roll.");
  const bound = stripBound(job);
  const straight: Sides = { across: Int32Array.from(pieces, (piece) => piece.width), up: Int32Array.from(pieces, (piece) => piece.height) };
  const sideways: Sides = { across: straight.up, up: straight.across };
  const chance = new Chance(seed);
  const unlimited = pieces.reduce((sum, piece) => sum + Math.max(piece.width, piece.height), 0);
  const orders = firstOrders(job);
  let best: StripPlan | null = null;
  const keep = (lie: Lie, isSideways: boolean): StripPlan => {
    const placed = pieces.map((piece, at): Placed => {
      const size = lie.turned[at] === 1 ? { width: piece.height, height: piece.width } : { width: piece.width, height: piece.height };
      return isSideways ? { x: lie.up[at]!, y: lie.across[at]!, ...size } : { x: lie.across[at]!, y: lie.up[at]!, ...size };
    });
    const height = placed.reduce((most, piece) => Math.max(most, piece.y + piece.height), 0);
    return { placed, height, bound };
  };
  const lie = emptyLie(pieces.length);
  for (const order of orders) {
    skyline(straight, order, { width, limit: unlimited, turned }, lie);
    const plan = keep(lie, false);
    if (best === null || plan.height < best.height) best = plan;
    yield best;
  }
  if (best === null) return { placed: [], height: 0, bound };
  for (let round = 0; best.height > bound; round++) {
    const limit: number = best.height - 1;
    const isSideways = round % 2 === 1;
    const search = anneal(
      isSideways ? sideways : straight,
      isSideways ? { width: limit, limit: width, turned } : { width, limit, turned },
      orders[(round >> 1) % orders.length]!,
      chance,
    );
    for (let step = search.next(); ; step = search.next()) {
      if (step.done && step.value !== null) best = keep(step.value, isSideways);
      yield best;
      if (step.done) break;
    }
  }
  return best;
}

/** Largest first by area, height, width and girth. Alike pieces keep their order. */
const firstOrders = ({ pieces }: StripJob): readonly Int32Array[] => {
  const measures = [
    (at: number) => pieces[at]!.width * pieces[at]!.height,
    (at: number) => pieces[at]!.height,
    (at: number) => pieces[at]!.width,
    (at: number) => pieces[at]!.width + pieces[at]!.height,
  ];
  return measures.map((measure) => Int32Array.from(pieces.keys()).sort((a, b) => measure(b) - measure(a) || a - b));
};
