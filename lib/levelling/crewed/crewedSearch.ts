import { lowerBound } from "../project/lowerBound";
import { Chance } from "../random";
import { CrewedPlacer, TASTES } from "./crewedPlacer";
import type { CrewedProject } from "./crewedProject";
import { CrewedProof, MOST_TASKS } from "./crewedProof";

const NO_LIMIT = 1_000_000_000;
/** Plans kept, and schedules in one round. */
const POPULATION = 40;
const PER_ROUND = 250;
/** Schedules before the exact search begins, and tasks it may place in its first turn; twice as many in each further one. */
const BEFORE_PROOF = 1000;
const FIRST_TURN = 20_000;
/** Turns of schedules without a shorter plan after which all but the best plan are drawn anew. */
const PATIENCE = 3000;

/** Chance of a task to choose its crew in a new way. */
const CHANGED = 0.05;

interface Member {
  readonly list: Int32Array;
  /** Per task: how its crew is chosen. */
  readonly taste: Uint8Array;
  readonly start: Int32Array;
  readonly crew: Int32Array;
  end: number;
}

/**
 * The best plan of a multi-skill project: a population of orders, each child justified backwards and forwards (Valls, Ballestin &
 * Quintanilla, European Journal of Operational Research 165 (2005) 375-386), in turn with an exact search.
 */
export class CrewedSearch {
  /** No plan is shorter. */
  lower: number;
  best: Member;
  private readonly chance: Chance;
  private readonly placer: CrewedPlacer;
  private members: Member[] = [];
  private readonly provers: CrewedProof[];
  private turn = 0;
  private idle = 0;

  /** `goal`: an end before it is worth no more than the goal itself. */
  constructor(
    private readonly project: CrewedProject,
    seed: number,
    private readonly goal: number,
    private readonly budget: number,
  ) {
    this.chance = new Chance(seed);
    this.placer = new CrewedPlacer(project, this.chance);
    this.lower = lowerBound(project);
    this.provers = project.count <= MOST_TASKS ? [new CrewedProof(project, 0), new CrewedProof(project, 1)] : [];
    this.best = this.fresh();
    this.draw(this.best.list, false);
    this.forwards(this.best);
  }

  get schedules(): number {
    return (this.placer.placed + this.provers.reduce((sum, { placed }) => sum + placed, 0)) / this.project.count;
  }

  get done(): boolean {
    return this.best.end <= Math.max(this.lower, this.goal) || this.schedules >= this.budget;
  }

  round(): void {
    const before = this.schedules;
    if (this.provers.length > 0 && this.schedules >= Math.min(BEFORE_PROOF, 0.3 * this.budget)) this.prove();
    // The population has its share of a round in which the exact search did much.
    const until = this.schedules + Math.max(PER_ROUND, 2 * (this.schedules - before));
    while (!this.done && this.schedules < until) this.evolve();
  }

  /** The worker of each seat of a task in the best plan. */
  seated(task: number): number[] {
    return this.placer.seated(task, this.best.crew[task]!);
  }

  private evolve(): void {
    const { members, chance } = this;
    if (members.length < POPULATION) {
      const one = this.fresh();
      this.draw(one.list, true);
      this.forwards(one);
      this.justify(one);
      members.push(one);
      this.keep(one);
      return;
    }
    const mother = chance.below(POPULATION);
    const father = this.better(chance.below(POPULATION), chance.below(POPULATION));
    const child = this.fresh();
    this.cross(members[mother]!.list, members[father]!.list, child.list);
    this.inherit(members[mother]!.taste, members[father]!.taste, child.taste);
    this.forwards(child);
    this.justify(child);
    const worst = this.worse(mother, this.worse(chance.below(POPULATION), chance.below(POPULATION)));
    if (child.end <= members[worst]!.end) members[worst] = child;
    this.keep(child);
    if (++this.idle * 3 < PATIENCE) return;
    this.idle = 0;
    this.members = [];
  }

  private keep(one: Member): void {
    if (one.end >= this.best.end) return;
    this.best = { ...one, list: one.list.slice(), start: one.start.slice(), crew: one.crew.slice(), end: one.end };
    this.idle = 0;
  }

  private better(a: number, b: number): number {
    return this.members[a]!.end <= this.members[b]!.end ? a : b;
  }

  private worse(a: number, b: number): number {
    return this.members[a]!.end >= this.members[b]!.end ? a : b;
  }

  private forwards(one: Member): void {
    one.end = this.placer.place(0, one.list, one.taste, one.start, one.crew);
  }

  /** Pushed to the right in the order of the ends, then to the left in the order of the starts that gives. */
  private justify(one: Member): void {
    const { duration } = this.project;
    this.sortBy(one.list, (task) => -one.start[task]! - duration[task]!, 1);
    const end = this.placer.place(1, one.list, one.taste, one.start, one.crew);
    // A start counted from the end is the end of what must follow.
    this.sortBy(one.list, (task) => end - one.start[task]! - duration[task]!, 0);
    this.forwards(one);
    this.sortBy(one.list, (task) => one.start[task]!, 0);
  }

  /** Sorted by key; ties so that each task stands after those before it on that side. */
  private sortBy(list: Int32Array, key: (task: number) => number, side: 0 | 1): void {
    const { order } = this.project.sides[side];
    const rank = this.ranks[side];
    if (rank.length === 0) for (let k = 0; k < order.length; k++) rank[order[k]!] = k;
    const keys = this.keys;
    for (let task = 0; task < list.length; task++) keys[task] = key(task) * list.length + rank[task]!;
    for (let i = 0; i < list.length; i++) list[i] = i;
    list.sort((a, b) => keys[a]! - keys[b]!);
  }

  private readonly ranks: [number[], number[]] = [[], []];
  private readonly keys: number[] = [];

  /** Two cuts: the mother's order outside them, the father's between. */
  private cross(mother: Int32Array, father: Int32Array, child: Int32Array): void {
    const { chance } = this;
    const count = child.length;
    const one = chance.below(count);
    const two = chance.below(count);
    const [from, to] = one < two ? [one, two] : [two, one];
    const taken = new Uint8Array(count);
    let filled = 0;
    const take = (list: Int32Array, until: number): void => {
      for (let k = 0; k < count && filled < until; k++) {
        const task = list[k]!;
        if (taken[task] === 1) continue;
        taken[task] = 1;
        child[filled++] = task;
      }
    };
    take(mother, from);
    take(father, to);
    take(mother, count);
  }

  /** Each task chooses as with one of the parents, now and then in a way of its own. */
  private inherit(mother: Uint8Array, father: Uint8Array, child: Uint8Array): void {
    const { chance } = this;
    for (let task = 0; task < child.length; task++) {
      const draw = chance.next();
      child[task] = draw < CHANGED ? chance.below(TASTES) : draw < 0.5 ? father[task]! : mother[task]!;
    }
  }

  /** An order by latest start, with chance in proportion to how pressing each task is. */
  private draw(list: Int32Array, byChance: boolean): void {
    const { count, sides, duration } = this.project;
    const { tail, first, before } = sides[0];
    const missing = Int32Array.from({ length: count }, (_, task) => first[task + 1]! - first[task]!);
    const after: number[][] = Array.from({ length: count }, () => []);
    for (let task = 0; task < count; task++) for (let i = first[task]!; i < first[task + 1]!; i++) after[before[i]!]!.push(task);
    const ready: number[] = [];
    for (let task = 0; task < count; task++) if (missing[task] === 0) ready.push(task);
    for (let k = 0; k < count; k++) {
      const least = ready.reduce((low, task) => Math.min(low, tail[task]! - duration[task]!), NO_LIMIT);
      const weights = ready.map((task) => (tail[task]! - duration[task]! - least + 1) ** 1.5);
      const at = byChance ? this.chance.pick(weights) : weights.indexOf(Math.max(...weights));
      const task = ready[at]!;
      ready[at] = ready.at(-1)!;
      ready.pop();
      list[k] = task;
      for (const next of after[task]!) if (--missing[next]! === 0) ready.push(next);
    }
  }

  private prove(): void {
    const side = this.turn % 2 === 0 ? 0 : 1;
    const prover = this.provers[side]!;
    const left = (this.budget - this.schedules) * this.project.count;
    const outcome = prover.search(this.best.end - 1, Math.min(FIRST_TURN * 2 ** (this.turn >> 1), left));
    if (outcome === "none") this.lower = this.best.end;
    if (outcome === "unfinished") this.turn++;
    if (outcome !== "found") return;
    const { duration } = this.project;
    const end = prover.start.reduce((latest, t, task) => Math.max(latest, t + duration[task]!), 0);
    const start = side === 0 ? prover.start.slice() : prover.start.map((t, task) => end - t - duration[task]!);
    this.best = { ...this.best, start, crew: prover.crew!, end };
  }

  private fresh(): Member {
    const { count } = this.project;
    return {
      list: new Int32Array(count),
      taste: new Uint8Array(count),
      start: new Int32Array(count),
      crew: new Int32Array(count),
      end: NO_LIMIT,
    };
  }
}
