import { plainDate } from "#lib/calendar/days";
import { MINUTES_PER_DAY, type WallMinute } from "#lib/calendar/plainDate";
import { level } from "#lib/levelling/level";
import type { LevellingProblem, Plan } from "#lib/levelling/problem";
import { Chance } from "#lib/levelling/random";
import { toWall } from "#lib/planning/axis";
import { prepare } from "#lib/planning/prepare";
import type { Prepared } from "#lib/planning/prepared";
import type { Milestone, Staging } from "#lib/staging/staging";
import type { PerMille } from "#lib/units/quantities";
import { oneWorkroom } from "./oneWorkroom";

export interface Planted {
  readonly stagings: readonly [Staging, ...Staging[]];
  readonly prepared: readonly [Prepared, ...Prepared[]];
  /** Of all the stagings in their one workroom. */
  readonly problem: LevellingProblem;
  /** Legal, and with this plan nothing is late and nobody works overtime. A search may not look at it. */
  readonly hidden: Plan;
}

/**
 * Makes a legal plan first, garments in an order of chance and without overtime, hides it, and sets due dates from it: so that no lateness and no
 * overtime are known to be possible. At a tightness of 1000 a piece is due in the minute it is finished in the hidden plan; at 800 that is
 * four fifths of the way from the first day.
 * @throws Error when the plan does not fit into the calendars, which run on for weeks after the last parade.
 */
export const plant = (bare: readonly [Staging, ...Staging[]], tightness: PerMille, seed: number): Planted => {
  const hidden = hiddenPlan(oneWorkroom(preparedAll(bare)), new Chance(seed));
  if (hidden.unplaced.length > 0) throw new Error(`The hidden plan has no place for ${hidden.unplaced.length} nodes: give it more weeks.`);
  let first = 0;
  const stagings = bare.map((staging) => {
    const prepared = prepare(staging, { today: staging.production.starts });
    const ends = hidden.placed.slice(first, first + prepared.nodes.length).map((placement) => placement!.end);
    first += prepared.nodes.length;
    return withDues(staging, prepared, ends, tightness);
  }) as [Staging, ...Staging[]];
  const prepared = preparedAll(stagings);
  return { stagings, prepared, problem: oneWorkroom(prepared), hidden };
};

const preparedAll = (stagings: readonly [Staging, ...Staging[]]) =>
  stagings.map((staging) => prepare(staging, { today: staging.production.starts })) as [Prepared, ...Prepared[]];

/** Every garment has a due date of chance that it cannot miss, so that only the order of the garments follows it. */
const hiddenPlan = (problem: LevellingProblem, chance: Chance): Plan => {
  const dues = problem.dues.map((due) => ({ ...due, at: 2 * problem.horizon + chance.below(problem.horizon) }));
  const makers = problem.makers.map((maker) => ({ ...maker, calendar: maker.calendar.filter(({ overtime }) => !overtime) }));
  return level({ ...problem, makers, dues }, { seed: 1, rounds: 0, stop: () => false }).plan;
};

/** Each piece has a milestone of its own, when the last of its garments is finished. */
const withDues = (staging: Staging, { axis, nodes, garments }: Prepared, ends: readonly number[], tightness: PerMille): Staging => {
  const pieceOf = new Map(garments.map(({ number, piece }) => [number, piece]));
  const finished = new Map<string, number>();
  for (const [at, node] of nodes.entries()) {
    if (node.kind !== "finished") continue;
    const piece = pieceOf.get(node.garment)!;
    finished.set(piece, Math.max(ends[at]!, finished.get(piece) ?? 0));
  }
  const milestones = staging.pieces.map(({ code, name }) =>
    milestoneAt(code, name, toWall(axis, Math.ceil(((finished.get(code) ?? 0) * 1000) / tightness))),
  );
  return { ...staging, milestones, pieces: staging.pieces.map((piece) => ({ ...piece, due: piece.code })) };
};

const milestoneAt = (code: string, name: string, wall: WallMinute): Milestone => ({
  code,
  kind: "dress parade",
  name: `${name} ready`,
  date: plainDate(Math.floor(wall / MINUTES_PER_DAY)),
  at: wall % MINUTES_PER_DAY,
});
