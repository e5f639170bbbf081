import type { Compiled } from "./compiled";
import { mirrored, mirroredReleases } from "./mirror";
import type { Choices } from "./placeNode";
import type { Schedule } from "./schedule";
import { serial } from "./serial";

/**
 * Backward and forward passes (Li & Willis 1992): set everything as late as its dues allow, in order of its end, then again as
 * early as can be in the order that gave.
 */
export class Justifier {
  private readonly backwards: Compiled;

  constructor(private readonly compiled: Compiled) {
    this.backwards = mirrored(compiled.problem);
  }

  /** Keys for the forward pass: starts in the schedule set late. One schedule by the field's counting. */
  keysOf(schedule: Schedule, choices: Choices): Float64Array {
    const { problem, count } = this.compiled;
    const keys = Float64Array.from({ length: count }, (_, node) => (schedule.isPlaced(node) ? -schedule.end[node]! : 0));
    const late = serial({ ...this.backwards, release: mirroredReleases(problem, schedule) }, keys, { ...choices, kept: null });
    return Float64Array.from({ length: count }, (_, node) => (late.isPlaced(node) ? problem.horizon - late.end[node]! : problem.horizon));
  }
}
