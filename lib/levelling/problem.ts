import type { Aim } from "./aims";

/**
 * What the engine is told. It knows tasks, people, machines and time; no garments, no dates.
 * All times are minutes on one integer axis that starts at 0; all references are indices into the arrays.
 */
export interface LevellingProblem {
  readonly skills: readonly string[];
  readonly makers: readonly EngineMaker[];
  readonly machines: readonly EngineMachine[];
  readonly rooms: readonly EngineRoom[];
  readonly performers: readonly EnginePerformer[];
  /** Nodes of the graph: work for makers, or fittings. */
  readonly nodes: readonly EngineNode[];
  readonly precedences: readonly Precedence[];
  readonly dues: readonly Due[];
  /** Hours of the workroom, sorted and disjoint: what a lag of working time is counted in. Absent: the hours in which any maker works. */
  readonly open?: readonly Interval[];
  /** No calendar reaches past this minute. */
  readonly horizon: number;
  /** Longest stretch of minutes a maker may work between rests, etc. are inside calendars; this is for the measures. */
  readonly week: { readonly minutes: number; readonly offset: number };
  /** Kept plan to stay close to; null for a fresh one. */
  readonly current: Plan | null;
}

/** Half-open [start, end). */
export interface Interval {
  readonly start: number;
  readonly end: number;
}

/** Working time: in one minute a maker does `speed`/1000 minutes of standard work (productive share, newcomer's pace). */
export interface Stretch extends Interval {
  readonly speed: number;
  readonly overtime: boolean;
}

export interface EngineMaker {
  readonly id: string;
  /** Per skill index: pace in per mille, 0 when the maker does not have it. */
  readonly pace: readonly number[];
  /** Sorted, disjoint. */
  readonly calendar: readonly Stretch[];
  readonly costPerHour: number;
  readonly overtimeCostPerHour: number;
}

export interface EngineMachine {
  readonly id: string;
  readonly count: number;
  /** Null: always there. */
  readonly calendar: readonly Interval[] | null;
  /** When work outside this problem has one of them; two at once have two. */
  readonly taken?: readonly Interval[];
}

export interface EngineRoom {
  readonly id: string;
  /** Visits it takes at once. */
  readonly count: number;
  readonly free: readonly Interval[];
  /** When visits outside this problem are in it. */
  readonly taken?: readonly Interval[];
}

export interface EnginePerformer {
  readonly id: string;
  /** When a fitting may be: work span less class, calls, rests. Sorted, disjoint. */
  readonly free: readonly Interval[];
  /** Most visits that begin in one week; absent: no limit. Those with something pinned count, and may be more. */
  readonly visitsAWeek?: number;
}

export type EngineNode = EngineTask | EngineFitting;

export interface EngineTask {
  readonly kind: "task";
  readonly id: string;
  /** Chain it belongs to (a garment or a batch): used for explanations and neighbourhoods. */
  readonly group: string;
  /** Standard minutes. With no crew this is plain elapsed time (a dye drying, an approval, an RCPSP activity). */
  readonly minutes: number;
  /** Who works, all together and for the whole length: so many makers of each skill; a maker serves one skill. */
  readonly crew: readonly { readonly skill: number; readonly count: number }[];
  readonly machines: readonly { readonly machine: number; readonly count: number }[];
  readonly release: number;
  /** Follows its maker's working time, over nights, breaks and appointments. Otherwise it must lie in one stretch. */
  readonly pauses: boolean;
  readonly straining: { readonly run: number; readonly rest: number } | null;
  /** Already begun or fixed by hand: maker and start may not change. */
  readonly pin: { readonly makers: readonly number[]; readonly start: number } | null;
}

export interface EngineFitting {
  readonly kind: "fitting";
  readonly id: string;
  readonly group: string;
  readonly performer: number;
  readonly minutes: number;
  /** Skill of the fitter who attends. */
  readonly fitterSkill: number;
  readonly release: number;
  /** Start is a multiple of this (15). */
  readonly step: number;
  readonly pin: { readonly fitter: number; readonly room: number; readonly start: number } | null;
}

/** `after` may start once `lag` minutes have passed since `before` ended: on the clock, or of working time (the workroom's hours). */
export interface Precedence {
  readonly before: number;
  readonly after: number;
  readonly lag: number;
  readonly lagKind: "elapsed" | "working";
  /** Hard upper limit on the lag, only inside one group; null for none. */
  readonly maxLag: number | null;
}

/** The node should have ended by `at`; a late one costs `weight` a minute. */
export interface Due {
  readonly node: number;
  readonly at: number;
  readonly weight: number;
  readonly label: string;
}

/** What the engine answers. */
export interface Plan {
  /** One for each node, in node order; null when it could not be placed (then it is in `unplaced`). */
  readonly placed: readonly (Placement | null)[];
  readonly visits: readonly Visit[];
  readonly unplaced: readonly Unplaced[];
}

export interface Placement {
  readonly start: number;
  readonly end: number;
  /** Makers in the order of the crew, one entry a person, with the skill served. For a fitting: its fitter. */
  readonly makers: readonly { readonly maker: number; readonly skill: number }[];
  /** When work is really done, within [start, end): what the calendar, appointments and rests leave. */
  readonly stretches: readonly Interval[];
  /** May use overtime stretches of its makers. */
  readonly overtime: boolean;
}

/** One appointment: fittings of one performer, one after the other, same fitter and room. */
export interface Visit {
  readonly performer: number;
  readonly fitter: number;
  readonly room: number;
  readonly start: number;
  readonly end: number;
  readonly fittings: readonly number[];
}

export interface Unplaced {
  readonly node: number;
  readonly reason:
    | "no one has the skill"
    | "no time left in the calendars"
    | "performer never free"
    | "no room"
    | "waits for an unplaced one"
    | "machine missing"
    | "not in the kept plan";
  readonly detail: string;
}

export interface Measures {
  /** Sum of weight x minutes late. */
  readonly weightedLateness: number;
  readonly lateDues: number;
  readonly overtimeMinutes: number;
  /** Sum of squared weekly load share per maker: less is more even. */
  readonly unevenness: number;
  /** Nodes whose maker or day differs from the current plan. */
  readonly moved: number;
  readonly finish: number;
  readonly visits: number;
}

export interface Bounds {
  /** No plan is less late than this; 0 when nothing better is proved. */
  readonly weightedLateness: number;
  /** No plan finishes before this. */
  readonly finish: number;
  /** No plan without lateness needs less overtime; null: none known. */
  readonly overtimeMinutes: number | null;
  /** What each bound rests on, in words. */
  readonly reasons: readonly string[];
}

export interface LevellingAnswer {
  readonly plan: Plan;
  readonly measures: Measures;
  readonly bounds: Bounds;
  readonly late: readonly LateChain[];
  readonly seed: number;
  /** Rounds completed: same seed and rounds, same plan. */
  readonly rounds: number;
  /** Schedules generated, by the field's counting. */
  readonly schedules: number;
  /** Name of the start that gave the plan kept. */
  readonly rule: string;
}

export type Cause = "work" | "predecessor" | "maker busy" | "machine" | "fitting" | "delivery" | "calendar" | "lag";

/** One stretch of the way to a late finish. Links are in order and tile [release, finish) of the chain. */
export interface Link {
  readonly node: number;
  readonly cause: Cause;
  readonly start: number;
  readonly end: number;
  /** The maker, machine, performer or node that was waited for; null where there is none. */
  readonly on: { readonly maker?: number; readonly machine?: number; readonly performer?: number; readonly node?: number } | null;
}

export interface LateChain {
  readonly due: number;
  readonly minutesLate: number;
  readonly links: readonly Link[];
}

export interface LevelOptions {
  readonly seed: number;
  /** Rounds of the search; 0 keeps the plain priority rule. */
  readonly rounds: number;
  /** Stops when the clock passed in says so, or the user does. */
  readonly stop: () => boolean;
  /** Most schedules to generate, by the field's counting; the round in which they run out is not finished. */
  readonly schedules?: number;
  /** What counts first after lateness and overtime. Usual: evenness, change, visits; with a current plan change comes first. */
  readonly order?: readonly Aim[];
  readonly onRound?: (round: number, best: Measures) => void;
}
