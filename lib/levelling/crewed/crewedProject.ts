import type { LevellingProblem } from "../problem";
import { type Side, sideOf } from "../project/project";

/** Longest axis on which time is counted step by step, and most workers: they are bits of one integer. */
const MOST_STEPS = 4000;
const MOST_WORKERS = 30;
const MOST_SKILLS = 8;

/**
 * The multi-skill project: each task asks for so many workers of some skills, all for its whole length, and the end of all is to be
 * early (Bellenguez & Neron, PATAT 2004, LNCS 3616 (2005) 229-243). Workers work at one pace and are always there.
 */
export interface CrewedProject {
  readonly count: number;
  /** In steps of time. */
  readonly duration: Int32Array;
  readonly links: readonly { readonly before: number; readonly after: number }[];
  readonly sides: readonly [forward: Side, backward: Side];
  /** Sum of durations. */
  readonly horizon: number;
  readonly workers: number;
  /** Per skill: the workers who have it, as bits. */
  readonly having: Int32Array;
  /** Per task: the skill of each of its seats. */
  readonly seats: readonly Int32Array[];
  /** Per task: sets of its skills, each as the workers who have one of them and the seats they must fill (Hall). */
  readonly tests: readonly { readonly workers: Int32Array; readonly seats: Int32Array }[];
  /** Sets of skills that can run short between tasks: workers asked by each task, and the workers there are. */
  readonly amounts: readonly Int32Array[];
  readonly capacities: readonly number[];
  /** The workers of each of these sets, as bits. */
  readonly pools: Int32Array;
}

/** A problem that is a multi-skill project, and the minutes in one step of its time. */
export interface Recognised {
  readonly project: CrewedProject;
  readonly step: number;
}

/** The problem as a multi-skill project when that is all it is; null for any other problem. */
export function crewedProjectOf(problem: LevellingProblem): Recognised | null {
  const { nodes, makers, skills, precedences, dues } = problem;
  if (problem.current !== null || dues.length !== 1 || nodes.length === 0) return null;
  if (makers.length === 0 || makers.length > MOST_WORKERS || skills.length > MOST_SKILLS) return null;
  if (precedences.some(({ lag, lagKind, maxLag }) => lag !== 0 || lagKind !== "elapsed" || maxLag !== null)) return null;
  if (makers.some(({ pace }) => pace.some((each) => each !== 0 && each !== 1000))) return null;
  const length = nodes.reduce((sum, { minutes }) => sum + minutes, 0);
  const isThere = ({ calendar: [stretch, ...others] }: (typeof makers)[number]): boolean =>
    stretch !== undefined &&
    others.length === 0 &&
    stretch.start === 0 &&
    stretch.end >= length &&
    stretch.speed === 1000 &&
    !stretch.overtime;
  if (!makers.every(isThere) || length > problem.horizon) return null;
  let step = 0;
  const seats: Int32Array[] = [];
  for (const node of nodes) {
    if (node.kind !== "task" || node.machines.length > 0 || node.release !== 0 || node.pin !== null || node.straining !== null) return null;
    step = divisor(step, node.minutes);
    seats.push(Int32Array.from(node.minutes === 0 ? [] : node.crew.flatMap(({ skill, count }) => new Array<number>(count).fill(skill))));
  }
  step = Math.max(1, step);
  if (length / step > MOST_STEPS) return null;
  const having = Int32Array.from(skills, (_, skill) =>
    makers.reduce((bits, { pace }, i) => (pace[skill] === 1000 ? bits | (1 << i) : bits), 0),
  );
  const project = projectOf(
    Int32Array.from(nodes, ({ minutes }) => minutes / step),
    seats,
    having,
    makers.length,
    precedences,
  );
  return project === null || !waitsForAll(project, dues[0]!.node) ? null : { project, step };
}

function projectOf(
  duration: Int32Array,
  seats: readonly Int32Array[],
  having: Int32Array,
  workers: number,
  links: CrewedProject["links"],
): CrewedProject | null {
  const tests = seats.map((own) => testsOf(own, having));
  if (tests.some((own) => own.workers.some((bits, i) => bitsIn(bits) < own.seats[i]!))) return null;
  const sets = shortSets(having, seats);
  const amounts = sets.map((set) => Int32Array.from(seats, (own) => own.filter((skill) => (set >> skill) & 1).length));
  const pools = Int32Array.from(sets, (set) => union(set, having));
  const capacities = sets.map((_, i) => bitsIn(pools[i]!));
  const work = { duration, amounts, capacities };
  const forward = sideOf(work, links);
  const backward = sideOf(
    work,
    links.map(({ before, after }) => ({ before: after, after: before })),
  );
  if (forward === null || backward === null) return null;
  const horizon = duration.reduce((sum, each) => sum + each, 0);
  return {
    count: duration.length,
    duration,
    links,
    sides: [forward, backward],
    horizon,
    workers,
    having,
    seats,
    tests,
    amounts,
    capacities,
    pools,
  };
}

const union = (set: number, having: Int32Array): number => having.reduce((bits, own, skill) => ((set >> skill) & 1 ? bits | own : bits), 0);

function testsOf(seats: Int32Array, having: Int32Array): { workers: Int32Array; seats: Int32Array } {
  const own = [...new Set(seats)].reduce((set, skill) => set | (1 << skill), 0);
  const sets: number[] = [];
  for (let set = own; set > 0; set = (set - 1) & own) sets.push(set);
  return {
    workers: Int32Array.from(sets, (set) => union(set, having)),
    seats: Int32Array.from(sets, (set) => seats.filter((skill) => (set >> skill) & 1).length),
  };
}

/** Sets of asked skills: of those with the same workers the largest, and none whose parts share nobody, as the parts say as much. */
function shortSets(having: Int32Array, seats: readonly Int32Array[]): number[] {
  const used = new Set(seats.flatMap((own) => [...own]));
  const all = [...used].reduce((set, skill) => set | (1 << skill), 0);
  const largest = new Map<number, number>();
  for (let set = all; set > 0; set = (set - 1) & all) {
    const pool = union(set, having);
    largest.set(pool, (largest.get(pool) ?? 0) | set);
  }
  return [...largest.values()].filter((set) => !fallsApart(set, having));
}

function fallsApart(set: number, having: Int32Array): boolean {
  for (let part = (set - 1) & set; part > 0; part = (part - 1) & set)
    if ((union(part, having) & union(set & ~part, having)) === 0) return true;
  return false;
}

export function bitsIn(word: number): number {
  let bits = word - ((word >>> 1) & 0x55555555);
  bits = (bits & 0x33333333) + ((bits >>> 2) & 0x33333333);
  return Math.imul((bits + (bits >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}

function waitsForAll(project: CrewedProject, node: number): boolean {
  const { first, before } = project.sides[0];
  const seen = new Set([node]);
  for (const task of seen) for (let i = first[task]!; i < first[task + 1]!; i++) seen.add(before[i]!);
  return seen.size === project.count;
}

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
