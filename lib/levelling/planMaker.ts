import type { Candidate, Draft } from "./candidate";
import type { Compiled } from "./compiled";
import { dispatched, MOST_DISPATCHED } from "./dispatch";
import { Justifier } from "./justify";
import { ancestorsOf } from "./neighbours";
import { outlookOf } from "./outlook";
import { type Choices, plainChoices } from "./placeNode";
import type { Plan } from "./problem";
import { repaired } from "./ruin/repair";
import { RULES, type Rule } from "./rules";
import { Score } from "./score";
import { serial } from "./serial";

/** Nodes placed by all further rules together, where a problem is very large. */
const NODES_BY_RULES = 100_000;

/** Makes plans from drafts and rules, and counts them against the budget. */
export class PlanMaker {
  schedules = 0;
  readonly outlook;
  private justifier: Justifier | null = null;

  constructor(
    private readonly compiled: Compiled,
    private readonly budget: number,
  ) {
    this.outlook = outlookOf(compiled);
  }

  get spent(): boolean {
    return this.schedules >= this.budget;
  }

  from({ keys, choices, name }: Draft): Candidate {
    this.schedules++;
    const schedule = serial(this.compiled, keys, choices);
    return { order: byStart(schedule.start, keys), choices, score: new Score(schedule), rule: name };
  }

  byRule({ name, key }: Rule): Candidate {
    return this.plainly(
      Float64Array.from({ length: this.compiled.count }, (_, node) => key(this.outlook, node)),
      name,
    );
  }

  /** The plans of an island's share of the further rules, as long as the budget lasts. */
  *byRules(finish: number, island: number, islands: number): Generator<Candidate> {
    const rules = RULES.slice(0, Math.max(islands, Math.round(NODES_BY_RULES / Math.max(1, this.compiled.count))));
    for (const rule of rules.filter((_, i) => i % islands === island)) if (!this.spent) yield this.byRule(rule);
    if (this.compiled.count > MOST_DISPATCHED) return;
    for (const lookAhead of [0.5, 1, 2, 4].filter((_, i) => i % islands === island)) {
      if (!this.spent) yield this.plainly(dispatched(this.compiled, this.outlook, finish, lookAhead), "tardiness cost");
    }
  }

  /** The plan once more, with overtime allowed for all that a late due waits for; nothing when none is late. */
  *withOvertime({ order, choices, score: { schedule, lateness } }: Candidate): Generator<Candidate> {
    if (lateness === 0 || this.spent || this.compiled.problem.makers.length === 0) return;
    const overtime = choices.overtime.slice();
    for (const { node, at } of this.compiled.problem.dues) {
      if (schedule.end[node]! > at) for (const before of ancestorsOf(this.compiled, node)) overtime[before] = 1;
    }
    const keys = new Float64Array(order.length);
    order.forEach((node, rank) => {
      keys[node] = rank;
    });
    yield this.from({ keys, choices: { ...choices, overtime, kept: null }, name: "overtime for late work" });
  }

  /** Everything where the plan has it, as far as that is still possible. */
  keeping(plan: Plan): Candidate {
    const { problem, count } = this.compiled;
    this.schedules++;
    const schedule = repaired(this.compiled, this.outlook, plan);
    if (schedule !== null) {
      const overtime = schedule.overtime.slice();
      return {
        order: byStart(schedule.start),
        choices: { ...plainChoices(count), overtime },
        score: new Score(schedule),
        rule: "kept plan",
      };
    }
    const keys = Float64Array.from({ length: count }, (_, node) => plan.placed[node]?.start ?? problem.horizon);
    return this.from({ keys, choices: { ...plainChoices(count), kept: plan }, name: "kept plan" });
  }

  /** A backward and a forward pass from a plan. */
  *justified(candidate: Candidate): Generator<Candidate> {
    this.justifier ??= new Justifier(this.compiled);
    const choices: Choices = { ...candidate.choices, kept: null };
    this.schedules++;
    const keys = this.justifier.keysOf(candidate.score.schedule, choices);
    if (!this.spent) yield this.from({ keys, choices, name: "backwards and forwards" });
  }

  private plainly(keys: Float64Array, name: string): Candidate {
    return this.from({ keys, choices: plainChoices(this.compiled.count), name });
  }
}

/** Nodes by start, then by key, then by number; those without a place last. */
export function byStart(start: Int32Array, keys?: Float64Array): Int32Array {
  const at = (node: number): number => (start[node]! < 0 ? Number.POSITIVE_INFINITY : start[node]!);
  const key = (node: number): number => keys?.[node] ?? 0;
  return Int32Array.from(start.keys()).sort((a, b) => (at(a) === at(b) ? key(a) - key(b) || a - b : at(a) - at(b)));
}
