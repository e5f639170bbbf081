import type { Point } from "./sectionNet";

/** A layer as the tacks see it: where a share of its depth lies. */
export interface TackedLayer {
  readonly length: number;
  readonly at: (distance: number) => Point;
}

export type Tack = readonly [Point, Point];

/** Layers are tacked in threes, lowest first; then each group to the one above it. */
const GROUP = 3;
const WITHIN = [0.45, 0.67, 0.88];
const BETWEEN = 0.56;

/** Dashed lines that stand for the tacks, lowest layer first. They show how layers are joined, not how many tacks there are. */
export const tackLines = (layers: readonly TackedLayer[]): readonly Tack[] => {
  const groups: (readonly TackedLayer[])[] = [];
  for (let first = 0; first < layers.length; first += GROUP) groups.push(layers.slice(first, first + GROUP));
  const join = (low: TackedLayer, high: TackedLayer, share: number): Tack => [low.at(low.length * share), high.at(low.length * share)];
  const within = groups.flatMap((group) => (group.length < 2 ? [] : WITHIN.map((share) => join(group[0]!, group.at(-1)!, share))));
  const between = groups.slice(1).map((group, index) => join(groups[index]!.at(-1)!, group[0]!, BETWEEN));
  return [...within, ...between];
};
