import type { Candidate, Draft } from "./candidate";
import type { Compiled } from "./compiled";
import type { Outlook } from "./outlook";
import { type Choices, plainChoices } from "./placeNode";
import type { Chance } from "./random";

/** Minutes by which all that leads to something late goes earlier at least, and the greatest part of its lateness besides. */
const LEAST = 60;
const MOST_OF_LATENESS = 1.3;

/**
 * Whole plans, each learning from the one before: what led to something late goes earlier in the order the next time, by a part of
 * the lateness drawn by chance (squeaky wheel optimization: Joslin & Clements, Journal of Artificial Intelligence Research 10
 * (1999) 353-373). The first order is by latest start.
 */
export class Urging {
  private readonly keys: Float64Array;
  private readonly choices: Choices;
  private readonly greatestWeight: number;

  /** `overtime`: what leads to something late may also be worked in overtime from then on. */
  constructor(
    private readonly compiled: Compiled,
    { latest, length }: Outlook,
    readonly overtime: boolean,
  ) {
    const { count, problem } = compiled;
    this.keys = Float64Array.from(latest, (at, node) => at - length[node]!);
    this.choices = plainChoices(count);
    this.greatestWeight = problem.dues.reduce((most, { weight }) => Math.max(most, weight), 1e-9);
  }

  get draft(): Draft {
    const { keys, choices } = this;
    return { keys, choices: { ...choices, overtime: choices.overtime.slice() }, name: "late work urged" };
  }

  learn({ score: { schedule } }: Candidate, chance: Chance): void {
    const { links, order, problem, count } = this.compiled;
    const pressure = new Float64Array(count);
    for (const { node, at, weight } of problem.dues) {
      const late = (Math.max(0, schedule.end[node]! - at) * weight) / this.greatestWeight;
      if (schedule.isPlaced(node) && late > pressure[node]!) pressure[node] = late;
    }
    const part = 0.1 + (MOST_OF_LATENESS - 0.1) * chance.next();
    for (let k = count - 1; k >= 0; k--) {
      const node = order[k]!;
      for (let i = links.outFirst[node]!; i < links.outFirst[node + 1]!; i++)
        pressure[node] = Math.max(pressure[node]!, pressure[links.after[links.out[i]!]!]!);
      if (pressure[node] === 0) continue;
      this.keys[node] = this.keys[node]! - LEAST - part * pressure[node]!;
      if (this.overtime) this.choices.overtime[node] = 1;
    }
  }
}
