import type { Clock } from "./clock";
import { UNITS } from "./clockStore";
import type { Compiled } from "./compiled";

/** Some skills, all the work that asks for them and everybody who has one of them. */
export interface Pool {
  readonly name: string;
  /** Those with the same hours together: the sum of their paces, and the best. */
  readonly hours: readonly { readonly normal: Clock; readonly full: Clock; readonly paces: number; readonly best: number }[];
  /** Standard minutes asked of the pool, by node, in the order of the nodes given. */
  readonly nodes: Int32Array;
  readonly minutes: Float64Array;
}

/** What one node asks of one skill. A fitting takes its minutes on the clock, however quick the fitter is. */
interface Asked {
  readonly node: number;
  readonly skill: number;
  readonly minutes: number;
  readonly onTheClock: boolean;
}

/** Each skill, each two skills that somebody has together, and all; their work in the order of `nodes`. */
export function poolsOf(compiled: Compiled, nodes: Int32Array): Pool[] {
  const { problem } = compiled;
  const asked = askedBy(compiled, nodes);
  const used = [...new Set(asked.map(({ skill }) => skill))].sort((a, b) => a - b);
  const together = (a: number, b: number): boolean => problem.makers.some(({ pace }) => (pace[a] ?? 0) > 0 && (pace[b] ?? 0) > 0);
  const pairs = used.flatMap((a) => used.filter((b) => b > a && together(a, b)).map((b) => [a, b]));
  const sets = [...used.map((skill) => [skill]), ...pairs, ...(used.length > 2 ? [used] : [])];
  return sets.map((skills) => poolOf(compiled, skills, asked));
}

function poolOf({ problem, clocks }: Compiled, skills: readonly number[], asked: readonly Asked[]): Pool {
  const hours: { readonly normal: Clock; readonly full: Clock; paces: number; best: number }[] = [];
  let slowest = UNITS;
  problem.makers.forEach((maker, index) => {
    const pace = skills.reduce((best, skill) => Math.max(best, maker.pace[skill] ?? 0), 0);
    if (pace === 0) return;
    const [normal, full] = [clocks.ofMaker(index, false), clocks.ofMaker(index, true)];
    let same = hours.find((one) => one.normal === normal && one.full === full);
    if (same === undefined) {
      same = { normal, full, paces: 0, best: 0 };
      hours.push(same);
    }
    same.paces += pace;
    same.best = Math.max(same.best, pace);
    slowest = full.rates.reduce((rate, speed) => Math.min(rate, speed * pace), slowest);
  });
  const isIn = problem.skills.map((_, skill) => skills.includes(skill));
  const own = asked.filter(({ skill }) => isIn[skill]);
  const nodes = new Int32Array(own.length);
  const minutes = new Float64Array(own.length);
  own.forEach((one, i) => {
    nodes[i] = one.node;
    minutes[i] = one.onTheClock ? (one.minutes * slowest) / UNITS : one.minutes;
  });
  const name = skills.length === problem.skills.length ? "the whole workroom" : skills.map((skill) => problem.skills[skill]).join(" or ");
  return { name, hours, nodes, minutes };
}

function askedBy({ problem }: Compiled, nodes: Int32Array): Asked[] {
  const asked: Asked[] = [];
  for (const index of nodes) {
    const node = problem.nodes[index]!;
    if (node.minutes === 0) continue;
    if (node.kind === "fitting") asked.push({ node: index, skill: node.fitterSkill, minutes: node.minutes, onTheClock: true });
    else for (const { skill, count } of node.crew) asked.push({ node: index, skill, minutes: count * node.minutes, onTheClock: false });
  }
  return asked;
}
