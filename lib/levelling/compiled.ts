import { blocksOf } from "./blocks";
import { type Clock, makeClock, NEVER } from "./clock";
import { ClockStore } from "./clockStore";
import type { Straining } from "./labour";
import { type Links, linksOf, topological } from "./links";
import type { EngineFitting, EngineTask, LevellingProblem } from "./problem";

/** Who a task asks for, person by person. */
export type Seats = readonly { readonly skill: number }[];

/** The problem as the search reads it: typed arrays and indices, built once. */
export interface Compiled {
  readonly problem: LevellingProblem;
  readonly count: number;
  readonly tasks: readonly (EngineTask | null)[];
  readonly fittings: readonly (EngineFitting | null)[];
  readonly release: Int32Array;
  readonly seats: readonly Seats[];
  /** Per node: its machines that have opening hours. */
  readonly openMachines: readonly (readonly number[])[];
  readonly straining: readonly (Straining | null)[];
  /** Longest rest any straining work asks for: how far apart two such tasks of one maker may have to be. */
  readonly longestRest: number;
  /** Per skill: its makers, those with fewest scarce skills first. */
  readonly skilled: readonly Int32Array[];
  /** Per skill: the paces of its makers, in the same order. */
  readonly paces: readonly Float64Array[];
  /** Per skill: each different calendar, overtime included, of its makers, with the best pace in it. */
  readonly quickest: readonly (readonly { readonly clock: Clock; readonly pace: number }[])[];
  /** Per maker: the scarcer its skills, the higher. */
  readonly scarcity: Float64Array;
  readonly clocks: ClockStore;
  readonly links: Links;
  /** Every node after all that it waits for. */
  readonly order: Int32Array;
  /** Nodes that must be placed together because of greatest lags, each in an order that respects precedence. */
  readonly blocks: readonly Int32Array[];
  readonly blockOf: Int32Array;
  /** Per performer and per room: free time. */
  readonly performerFree: readonly Clock[];
  readonly roomFree: readonly Clock[];
}

export function compile(problem: LevellingProblem): Compiled {
  const { nodes, makers, skills } = problem;
  const tasks = nodes.map((node) => (node.kind === "task" ? node : null));
  const fittings = nodes.map((node) => (node.kind === "fitting" ? node : null));
  const scarcity = scarcityOf(problem);
  const skilled = skills.map((_, skill) =>
    Int32Array.from(
      makers
        .map((maker, index) => ({ index, pace: maker.pace[skill] ?? 0 }))
        .filter(({ pace }) => pace > 0)
        .sort((a, b) => scarcity[a.index]! - scarcity[b.index]! || a.index - b.index)
        .map(({ index }) => index),
    ),
  );
  const clocks = new ClockStore(problem);
  const links = linksOf(problem);
  const { blocks, blockOf } = blocksOf(nodes.length, links);
  const straining = tasks.map((task) => (task !== null && task.straining !== null && task.straining.run > 0 ? task.straining : null));
  const free = (intervals: readonly { start: number; end: number }[]): Clock =>
    makeClock(intervals.map((interval) => ({ start: interval.start, end: interval.end, rate: 1 })));
  return {
    problem,
    count: nodes.length,
    tasks,
    fittings,
    release: Int32Array.from(nodes, (node) => Math.max(0, Math.min(node.release, NEVER))),
    seats: tasks.map((task) =>
      task === null ? [] : task.crew.flatMap(({ skill, count }) => Array.from({ length: count }, () => ({ skill }))),
    ),
    openMachines: tasks.map((task) =>
      task === null ? [] : task.machines.map(({ machine }) => machine).filter((machine) => problem.machines[machine]!.calendar !== null),
    ),
    straining,
    longestRest: straining.reduce((most, one) => Math.max(most, one?.rest ?? 0), 0),
    skilled,
    paces: skilled.map((having, skill) => Float64Array.from(having, (maker) => makers[maker]!.pace[skill]!)),
    quickest: skilled.map((having, skill) => quickestOf(problem, clocks, having, skill)),
    scarcity,
    clocks,
    links,
    order: topological(nodes.length, links),
    blocks,
    blockOf,
    performerFree: problem.performers.map((performer) => free(performer.free)),
    roomFree: problem.rooms.map((room) => free(room.free)),
  };
}

function quickestOf(problem: LevellingProblem, clocks: ClockStore, makers: Int32Array, skill: number): { clock: Clock; pace: number }[] {
  const best = new Map<Clock, number>();
  for (const maker of makers) {
    const clock = clocks.ofMaker(maker, true);
    best.set(clock, Math.max(best.get(clock) ?? 0, problem.makers[maker]!.pace[skill]!));
  }
  return [...best].map(([clock, pace]) => ({ clock, pace }));
}

/** Minutes asked of each skill over the makers who have it; a maker's scarcity is the sum over their skills. */
function scarcityOf(problem: LevellingProblem): Float64Array {
  const asked = new Float64Array(problem.skills.length);
  for (const node of problem.nodes) {
    if (node.kind === "fitting") asked[node.fitterSkill] = asked[node.fitterSkill]! + node.minutes;
    else for (const { skill, count } of node.crew) asked[skill] = asked[skill]! + node.minutes * count;
  }
  const have = problem.skills.map((_, skill) => problem.makers.filter((maker) => (maker.pace[skill] ?? 0) > 0).length);
  return Float64Array.from(problem.makers, (maker) =>
    maker.pace.reduce((sum, pace, skill) => (pace > 0 ? sum + asked[skill]! / have[skill]! : sum), 0),
  );
}
