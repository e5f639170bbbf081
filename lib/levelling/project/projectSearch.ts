import { Chance } from "../random";
import { BranchAndBound, MOST_TASKS } from "./branchAndBound";
import { lowerBound } from "./lowerBound";
import { BiPopulation, type Standing } from "./population";
import type { Project } from "./project";

/** Schedules in one round. */
const PER_ROUND = 250;
/** With no budget given, the first population is meant for so many schedules, each further one for four times as many. */
const FIRST_TERM = 2000;
/** Plans a side at the end of a population's term. */
const FEWEST = 8;
/** Part of the budget, and most schedules, that small projects spend before the exact search begins. */
const BEFORE_PROOF = 0.3;
const MOST_BEFORE_PROOF = 1500;
/** Tasks the exact search may place in its first turn; four times as many in the next. */
const FIRST_TURN = 30_000;

/** What one search tells another. */
export interface Migrant {
  readonly best: Standing;
  readonly lower: number;
  /** The order of one of its plans; null when it holds none. */
  readonly order: Int32Array | null;
}

/** The best plan of a project: populations that grow with the budget, and an exact search with proof for small projects. */
export class ProjectSearch {
  /** No plan is shorter. */
  lower: number;
  best: Standing;
  private readonly chance: Chance;
  private population: BiPopulation;
  private term: number;
  private termEnd = 0;
  /** Counted in what is no longer at hand. */
  private counted = 0;
  private readonly provers: BranchAndBound[];

  /** `goal`: an end before it is worth no more than the goal itself. */
  constructor(
    private readonly project: Project,
    seed: number,
    private readonly goal: number,
    private readonly budget: number,
    /** Of turns of the exact search: an even one begins from the left. */
    private turn = 0,
  ) {
    this.chance = new Chance(seed);
    this.lower = lowerBound(project);
    this.provers = project.count <= MOST_TASKS ? [new BranchAndBound(project, 0), new BranchAndBound(project, 1)] : [];
    this.term = budget === Number.POSITIVE_INFINITY ? FIRST_TERM : budget;
    this.population = this.newPopulation();
    this.population.plain();
    this.best = this.population.best;
  }

  get schedules(): number {
    const proving = this.provers.reduce((sum, { placed }) => sum + placed, 0) / this.project.count;
    return this.counted + this.population.schedules + proving;
  }

  get done(): boolean {
    return this.best.end <= Math.max(this.lower, this.goal) || this.schedules >= this.budget;
  }

  round(): void {
    const began = this.schedules;
    if (this.provers.length > 0 && began >= Math.min(MOST_BEFORE_PROOF, BEFORE_PROOF * this.budget)) this.prove();
    else while (!this.done && this.schedules < began + PER_ROUND) this.evolve();
  }

  get migrant(): Migrant {
    return { best: this.best, lower: this.lower, order: this.population.size > 0 ? this.population.someOrder : null };
  }

  welcome({ best, lower, order }: Migrant): void {
    this.lower = Math.max(this.lower, lower);
    if (best.end < this.best.end) this.best = best;
    if (order !== null && this.population.size > 0 && !this.done) this.population.settle(order);
    if (this.population.best.end < this.best.end) this.best = this.population.best;
  }

  private evolve(): void {
    if (this.population.size === 0) {
      const size = sizeFor(this.term);
      this.termEnd = this.schedules + this.term;
      this.population.begin(size, drawnFor(size));
    } else if (this.schedules < this.termEnd) {
      this.population.shrink(Math.max(FEWEST, Math.round((sizeFor(this.term) * (this.termEnd - this.schedules)) / this.term)));
      this.population.sweep();
    } else {
      this.counted += this.population.schedules;
      this.term *= 4;
      this.population = this.newPopulation();
    }
    if (this.population.best.end < this.best.end) this.best = this.population.best;
  }

  /** Each side of time in turn: what is hopeless from one is often easy from the other. */
  private prove(): void {
    const side = this.turn % 2 === 0 ? 0 : 1;
    const prover = this.provers[side]!;
    const placements = FIRST_TURN * 4 ** (this.turn >> 1);
    const left = (this.budget - this.schedules) * this.project.count;
    const outcome = prover.search(this.best.end - 1, Math.min(placements, left));
    if (outcome === "none") this.lower = this.best.end;
    if (outcome === "found") this.best = this.foundBy(prover, side);
    if (outcome === "unfinished") this.turn++;
  }

  private foundBy({ start }: BranchAndBound, side: 0 | 1): Standing {
    const { duration } = this.project;
    const end = start.reduce((latest, t, task) => Math.max(latest, t + duration[task]!), 0);
    return { end, start: side === 0 ? start.slice() : start.map((t, task) => end - t - duration[task]!) };
  }

  private newPopulation(): BiPopulation {
    return new BiPopulation(this.project, this.chance, () => this.done || this.population.best.end <= Math.max(this.lower, this.goal));
  }
}

/** By trial on the published sets: 36 plans a side for 1,000 schedules, 101 for 5,000, 453 for 50,000, of which ever fewer stay. */
const sizeFor = (schedules: number): number => Math.max(FEWEST, Math.round(0.4 * schedules ** 0.65));

const drawnFor = (size: number): number => (size < 100 ? 3 : 2) * size;
