import type { Chance } from "../random";
import { Crossover } from "./crossover";
import { type Individual, Mirror, newIndividual } from "./individual";
import { Placer } from "./placer";
import type { Project } from "./project";
import { Sampling } from "./sampling";

const NO_LIMIT = 1_000_000_000;

/** Where the search stands: the best end, a plan that has it, and schedules counted. */
export interface Standing {
  readonly end: number;
  /** Counted from the beginning of time. */
  readonly start: Int32Array;
}

/**
 * Two populations, one of plans pushed to the left, one of plans pushed to the right. Parents of one give children to the
 * other, so that each child is also a justification: the bi-population genetic algorithm of Debels & Vanhoucke, Operations
 * Research 55 (2007) 457-469. A child takes its mother's place on the other side unless it ends later than what is there,
 * and is given up as soon as that is certain; only the tasks placed until then count.
 */
export class BiPopulation {
  best: Standing = { end: NO_LIMIT, start: new Int32Array(0) };
  private readonly placer: Placer;
  private readonly mirror: Mirror;
  private readonly crossover: Crossover;
  private sides: [Individual[], Individual[]] = [[], []];
  private parents: 0 | 1 = 1;
  private spare: Individual;

  constructor(
    private readonly project: Project,
    private readonly chance: Chance,
    private readonly enough: () => boolean,
  ) {
    this.placer = new Placer(project);
    this.mirror = new Mirror(project);
    this.crossover = new Crossover(project, chance);
    this.spare = newIndividual(project.count);
  }

  /** Schedules by the field's counting: tasks placed over tasks. */
  get schedules(): number {
    return this.placer.placed / this.project.count;
  }

  get size(): number {
    return this.sides[1].length;
  }

  /** The priority rule alone. */
  plain(): void {
    const one = newIndividual(this.project.count);
    new Sampling(this.project).fill(one.list, null);
    this.decode(0, one, NO_LIMIT);
  }

  /** Plans of a rule with chance, and each justified: of `drawn` the best `size` are kept. */
  begin(size: number, drawn: number): void {
    const sampling = new Sampling(this.project);
    const pairs: [Individual, Individual][] = [];
    for (let i = 0; i < drawn && !this.enough(); i++) {
      const left = newIndividual(this.project.count);
      sampling.fill(left.list, i === 0 ? null : this.chance);
      this.decode(0, left, NO_LIMIT);
      if (this.enough()) break;
      const right = newIndividual(this.project.count);
      right.list.set(left.mirrored);
      this.decode(1, right, NO_LIMIT);
      pairs.push([left, right]);
    }
    const kept = pairs.sort(([, a], [, b]) => a.end - b.end).slice(0, size);
    this.sides = [kept.map(([left]) => left), kept.map(([, right]) => right)];
    this.parents = 1;
  }

  /** One child for each plan of the side whose turn it is; true when one was taken that ends earlier. */
  sweep(): boolean {
    const from = this.sides[this.parents];
    const side = this.parents === 0 ? 1 : 0;
    const to = this.sides[side];
    let better = false;
    for (let i = 0; i < from.length && !this.enough(); i++) {
      const child = this.spare;
      this.crossover.cross(side, from[i]!, from[this.father(from, i)]!, child.list);
      const old = to[i]!;
      if (!this.decode(side, child, old.end)) continue;
      if (child.end < old.end) better = true;
      to[i] = child;
      this.spare = old;
    }
    this.parents = side;
    return better;
  }

  /** The order of one of the plans pushed to the left. */
  get someOrder(): Int32Array {
    return this.sides[0][this.chance.below(this.size)]!.list.slice();
  }

  /** A plan of another population, in the place of the worst pair unless that is better. */
  settle(order: Int32Array): void {
    const left = newIndividual(this.project.count);
    left.list.set(order);
    this.decode(0, left, NO_LIMIT);
    const right = newIndividual(this.project.count);
    right.list.set(left.mirrored);
    this.decode(1, right, NO_LIMIT);
    const [lefts, rights] = this.sides;
    const length = (i: number): number => lefts[i]!.end + rights[i]!.end;
    const worst = [...lefts.keys()].reduce((a, b) => (length(b) > length(a) ? b : a), 0);
    if (left.end + right.end > length(worst)) return;
    lefts[worst] = left;
    rights[worst] = right;
  }

  /** Only the best pairs stay, in the order they had: the fewer, the sooner they agree. */
  shrink(size: number): void {
    const [left, right] = this.sides;
    if (size >= left.length) return;
    const earlier = (i: number): number => Math.min(left[i]!.end, right[i]!.end);
    const kept = [...left.keys()]
      .sort((i, j) => earlier(i) - earlier(j) || left[i]!.end + right[i]!.end - left[j]!.end - right[j]!.end || i - j)
      .slice(0, size)
      .sort((i, j) => i - j);
    this.sides = [kept.map((i) => left[i]!), kept.map((i) => right[i]!)];
  }

  /** The better of two others. */
  private father(from: readonly Individual[], mother: number): number {
    const other = (): number => {
      const i = this.chance.below(from.length - 1);
      return i < mother ? i : i + 1;
    };
    if (from.length === 1) return mother;
    const one = other();
    const two = other();
    return from[two]!.end < from[one]!.end ? two : one;
  }

  private decode(side: 0 | 1, one: Individual, limit: number): boolean {
    one.end = this.placer.place(side, one.list, one.start, limit);
    if (one.end < 0) return false;
    this.mirror.fill(one);
    if (one.end < this.best.end) this.best = { end: one.end, start: this.fromTheBeginning(side, one) };
    return true;
  }

  private fromTheBeginning(side: 0 | 1, { start, end }: Individual): Int32Array {
    return side === 0 ? start.slice() : start.map((t, task) => end - t - this.project.duration[task]!);
  }
}
