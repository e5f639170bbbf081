import type { Aims } from "./aims";
import { movedFrom, overtimeOf, unevennessOf } from "./measures";
import { planOf } from "./planOf";
import type { Plan } from "./problem";
import type { Standing } from "./ruin/standing";
import type { Schedule } from "./schedule";

/** A schedule judged in the order of importance; what is dear to compute only when the rest is equal. */
export class Score {
  readonly unplaced: number;
  readonly lateness: number;
  readonly visits: number;
  private kept: { plan?: Plan; overtime?: number; unevenness?: number; moved?: number } = {};

  constructor(readonly schedule: Schedule) {
    const { problem } = schedule.compiled;
    let unplaced = 0;
    for (const why of schedule.unplaced) if (why !== null) unplaced++;
    this.unplaced = unplaced;
    let lateness = 0;
    for (const due of problem.dues) {
      const late = (schedule.isPlaced(due.node) ? schedule.end[due.node]! : problem.horizon) - due.at;
      if (late > 0) lateness += due.weight * late;
    }
    this.lateness = lateness;
    this.visits = schedule.visitCount;
  }

  get plan(): Plan {
    this.kept.plan ??= planOf(this.schedule);
    return this.kept.plan;
  }

  get overtime(): number {
    this.kept.overtime ??= this.schedule.overtime.includes(1) ? overtimeOf(this.problem, this.plan) : 0;
    return this.kept.overtime;
  }

  get unevenness(): number {
    this.kept.unevenness ??= this.problem.makers.length > 0 ? unevennessOf(this.problem, this.plan) : 0;
    return this.kept.unevenness;
  }

  get moved(): number {
    this.kept.moved ??= this.problem.current === null ? 0 : movedFrom(this.problem, this.plan);
    return this.kept.moved;
  }

  get finish(): number {
    return this.schedule.end.reduce((latest, end) => Math.max(latest, end), 0);
  }

  private get problem(): Schedule["compiled"]["problem"] {
    return this.schedule.compiled.problem;
  }
}

/** The figures of a score in the order of importance. */
export const standingOfScore = (score: Score, { order, evennessStep }: Aims): Standing => [
  score.unplaced,
  score.lateness,
  score.overtime,
  ...order.map((aim) => Math.round(score[aim] / (aim === "unevenness" ? evennessStep : 1))),
  score.unevenness,
  score.finish,
];

/** Below 0 when `a` is the better plan: nothing without a place, then least weighted lateness, overtime, and the further aims. */
export function compareScores(a: Score, b: Score, { order, evennessStep }: Aims): number {
  const first = a.unplaced - b.unplaced || a.lateness - b.lateness || a.overtime - b.overtime;
  if (first !== 0) return first;
  for (const aim of order) {
    const felt = aim === "unevenness" ? evennessStep : 1;
    const difference = Math.round(a[aim] / felt) - Math.round(b[aim] / felt);
    if (difference !== 0) return difference;
  }
  return a.unevenness - b.unevenness || a.finish - b.finish;
}
