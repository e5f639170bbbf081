import type { Compiled } from "../compiled";
import { ancestorsOf } from "../neighbours";
import type { Outlook } from "../outlook";
import type { Chance } from "../random";
import type { Schedule } from "../schedule";
import type { Tally } from "./tally";

/** What to take out of a schedule and how to put it back. */
export interface Ruin {
  /** Nodes with their keys: least goes back first. */
  readonly victims: Map<number, number>;
  /** Overtime allowed or refused to these nodes from now on. */
  readonly overtime?: { readonly nodes: readonly number[]; readonly allowed: boolean };
  /** Minutes a fitting may wait to share a visit. */
  readonly patience?: number;
  /** This once: a node's maker, or the minute before which it should not start. */
  readonly wanted?: { readonly node: number; readonly maker: number };
  readonly delayed?: { readonly node: number; readonly from: number };
}

export interface Scene {
  readonly compiled: Compiled;
  readonly schedule: Schedule;
  readonly tally: Tally;
  readonly outlook: Outlook;
  readonly chance: Chance;
  /** Nodes of each group, and the group of each node. */
  readonly groups: readonly (readonly number[])[];
  readonly groupOf: Int32Array;
}

/** Everything a late due waits for, or the later part of it, goes back first, and what its makers do before that is less urgent after it. */
export function lateChain(scene: Scene): Ruin | null {
  const { chance, schedule } = scene;
  const chain = chainOfLate(scene);
  const part = chance.next() < 0.5 ? chain : chain.slice(chance.below(chain.length));
  const lift = chance.next() < 0.2 ? 1e9 : 8000 * chance.next() ** 2;
  const victims = new Map(part.map((node) => [node, schedule.start[node]! - lift]));
  const reach = [0, 0, 2, 6][chance.below(4)]!;
  for (const node of part)
    for (const other of before(schedule, node, reach))
      if (!victims.has(other) && latestStart(scene, other) > latestStart(scene, node)) victims.set(other, latestStart(scene, other));
  return chance.next() < 0.15 ? { victims, overtime: { nodes: part, allowed: true } } : { victims };
}

/** What some late due waits for, in order of time. */
function chainOfLate({ compiled, tally, chance, schedule }: Scene): number[] {
  const late = compiled.problem.dues.filter(({ node }) => tally.late[node]! > 0);
  const { node } = late[chance.pick(late.map((due) => tally.late[due.node]!))]!;
  return [...ancestorsOf(compiled, node)].filter((one) => schedule.isPlaced(one)).sort((a, b) => schedule.start[a]! - schedule.start[b]!);
}

/** A node to change things about: one that something late waits for, while there is any. */
function centre(scene: Scene): number {
  if (scene.tally.lateness === 0 || scene.chance.next() < 0.2) return scene.chance.below(scene.compiled.count);
  const chain = chainOfLate(scene);
  return chain[scene.chance.below(chain.length)] ?? 0;
}

/** Some of what one maker does in a row, by urgency, by chance, or as it was. */
export function makerStretch(scene: Scene): Ruin | null {
  const { schedule, chance } = scene;
  const node = centre(scene);
  const maker = schedule.crew[node]![0]?.maker;
  if (maker === undefined || !schedule.isPlaced(node)) return null;
  return { victims: keyed(scene, [node, ...around(schedule, maker, schedule.start[node]!, 2 + chance.below(14))]) };
}

/** Work of one skill that lies about the same time. */
export function skillStretch(scene: Scene): Ruin | null {
  const { schedule, chance, compiled } = scene;
  const node = centre(scene);
  const skill = schedule.crew[node]![0]?.skill;
  if (skill === undefined || !schedule.isPlaced(node)) return null;
  const each = 1 + chance.below(4);
  const nodes = Array.from(compiled.skilled[skill]!, (maker) => around(schedule, maker, schedule.start[node]!, each)).flat();
  return { victims: keyed(scene, [node, ...nodes.slice(0, 40)]) };
}

/** A group and those whose work lies next to it. */
export function neighbouringGroups(scene: Scene): Ruin | null {
  const { schedule, chance, groups, groupOf } = scene;
  const node = centre(scene);
  if (!schedule.isPlaced(node)) return null;
  const maker = schedule.crew[node]![0]?.maker;
  const chosen = new Set([groupOf[node]!]);
  if (maker !== undefined)
    for (const other of around(schedule, maker, schedule.start[node]!, 1 + chance.below(3))) chosen.add(groupOf[other]!);
  const nodes = [...chosen].flatMap((group) => groups[group]!).slice(0, 60);
  return { victims: keyed(scene, nodes), patience: chance.next() < 0.5 ? 0 : 1440 * chance.below(6) };
}

/** Work that takes overtime, and what its maker does about that time, without it. */
export function lessOvertime(scene: Scene): Ruin | null {
  const { schedule, chance, compiled, tally } = scene;
  const weights = Array.from({ length: compiled.count }, (_, node) => tally.overtimeIn(node));
  const node = chance.pick(weights);
  const maker = schedule.crew[node]![0]?.maker;
  if (maker === undefined) return null;
  const nodes = [node, ...around(schedule, maker, schedule.start[node]!, chance.below(8))];
  const refused = chance.next() < 0.5 ? [node] : nodes;
  return { victims: keyed(scene, nodes), overtime: { nodes: refused, allowed: false } };
}

/** A task of a full week goes to another maker, or to a later time before it is needed. */
export function evenLoad(scene: Scene): Ruin | null {
  const { compiled, schedule, tally, chance } = scene;
  let node = -1;
  let fullest = 0;
  for (let i = 0; i < 6; i++) {
    const one = chance.below(compiled.count);
    const [person, ...others] = schedule.crew[one]!;
    if (person === undefined || others.length > 0 || !schedule.isPlaced(one)) continue;
    const cell = person.maker * tally.weeks + tally.weekOf(schedule.start[one]!);
    const share = tally.worked[cell]! / tally.free[cell]!;
    if (share > fullest) [node, fullest] = [one, share];
  }
  if (node < 0) return null;
  const start = schedule.start[node]!;
  const [{ maker, skill } = { maker: -1, skill: -1 }] = schedule.crew[node]!;
  const skilled = compiled.skilled[skill]!;
  const other = skilled[chance.below(skilled.length)]!;
  const until = Math.max(start, latestStart(scene, node));
  const from = chance.next() < 0.5 ? 0 : Math.floor(start + (until - start) * chance.next() ** 2);
  if (other === maker && from === 0) return null;
  return { victims: new Map([[node, start]]), wanted: { node, maker: other }, delayed: { node, from } };
}

/** The fittings of a visit wait for one of the performer's next. */
export function shareVisit(scene: Scene): Ruin | null {
  const { schedule, chance, compiled } = scene;
  const { ids } = schedule.performers[chance.below(compiled.problem.performers.length)]!;
  if (ids.length < 2) return null;
  const i = chance.below(ids.length - 1);
  const j = Math.min(ids.length - 1, i + 1 + Math.floor(3 * chance.next() ** 2));
  const visit = schedule.visits[ids[i]!]!;
  const later = schedule.visits[ids[j]!]!;
  const both = chance.next() < 0.3;
  const fittings = both ? [...visit.fittings, ...later.fittings] : visit.fittings;
  const victims = new Map(fittings.map((node) => [node, schedule.start[node]!]));
  return { victims, patience: later.end - visit.start + 60 };
}

const latestStart = ({ outlook }: Scene, node: number): number => outlook.latest[node]! - outlook.length[node]!;

function keyed(scene: Scene, nodes: readonly number[]): Map<number, number> {
  const { schedule, chance } = scene;
  const placed = nodes.filter((node) => schedule.isPlaced(node));
  const way = chance.below(4);
  const noise = way === 3 ? 1e6 : 2000 * chance.next() ** 2;
  return new Map(placed.map((node) => [node, (way === 0 ? latestStart(scene, node) : schedule.start[node]!) + noise * chance.next()]));
}

/** The last few tasks of a node's maker before it. */
function before(schedule: Schedule, node: number, most: number): number[] {
  const maker = schedule.crew[node]![0]?.maker;
  if (maker === undefined) return [];
  const { ids } = schedule.work[maker]!;
  const at = schedule.work[maker]!.firstEndingAfter(schedule.start[node]!);
  return ids.slice(Math.max(0, at - most), at);
}

/** Tasks of a maker about a time. */
function around(schedule: Schedule, maker: number, time: number, most: number): number[] {
  const busy = schedule.work[maker]!;
  const at = busy.firstEndingAfter(time);
  return busy.ids.slice(Math.max(0, at - (most >> 1)), at + most - (most >> 1));
}
