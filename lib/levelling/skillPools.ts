import type { Clock } from "./clock";
import { UNITS } from "./clockStore";
import type { Compiled } from "./compiled";

/** Some skills, all the work that asks for them and everybody who has one of them. */
export interface Pool {
  readonly name: string;
  readonly makers: readonly { readonly pace: number; readonly normal: Clock; readonly full: Clock }[];
  /** Standard minutes asked of the pool, by node. */
  readonly work: readonly { readonly node: number; readonly minutes: number }[];
}

/** Each skill, each two skills that somebody has together, and all. */
export function poolsOf(compiled: Compiled): Pool[] {
  const { problem } = compiled;
  const used = problem.skills.map((_, skill) => skill).filter((skill) => asksFor(compiled, [skill]).length > 0);
  const together = (a: number, b: number): boolean => problem.makers.some(({ pace }) => (pace[a] ?? 0) > 0 && (pace[b] ?? 0) > 0);
  const pairs = used.flatMap((a) => used.filter((b) => b > a && together(a, b)).map((b) => [a, b]));
  const sets = [...used.map((skill) => [skill]), ...pairs, ...(used.length > 2 ? [used] : [])];
  return sets.map((skills) => poolOf(compiled, skills));
}

function poolOf(compiled: Compiled, skills: readonly number[]): Pool {
  const { problem, clocks } = compiled;
  const makers = problem.makers.flatMap((maker, index) => {
    const pace = Math.max(...skills.map((skill) => maker.pace[skill] ?? 0));
    return pace > 0 ? [{ pace, normal: clocks.ofMaker(index, false), full: clocks.ofMaker(index, true) }] : [];
  });
  const slowest = makers.reduce((low, maker) => maker.full.rates.reduce((rate, speed) => Math.min(rate, speed * maker.pace), low), UNITS);
  const work = asksFor(compiled, skills).map(({ node, minutes, clockMinutes }) => ({
    node,
    minutes: minutes + (clockMinutes * slowest) / UNITS,
  }));
  const name = skills.length === problem.skills.length ? "the whole workroom" : skills.map((skill) => problem.skills[skill]).join(" or ");
  return { name, makers, work };
}

/** A fitting takes its minutes on the clock, however quick the fitter is. */
function asksFor(compiled: Compiled, skills: readonly number[]): { node: number; minutes: number; clockMinutes: number }[] {
  return compiled.problem.nodes.flatMap((node, index) => {
    if (node.kind === "fitting")
      return skills.includes(node.fitterSkill) && node.minutes > 0 ? [{ node: index, minutes: 0, clockMinutes: node.minutes }] : [];
    const seats = node.crew.reduce((count, { skill, count: more }) => (skills.includes(skill) ? count + more : count), 0);
    return seats > 0 && node.minutes > 0 ? [{ node: index, minutes: seats * node.minutes, clockMinutes: 0 }] : [];
  });
}
