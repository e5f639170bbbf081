import type { Candidate, Draft } from "./candidate";
import type { Compiled } from "./compiled";
import { ancestorsOf, groupOf } from "./neighbours";
import type { Choices } from "./placeNode";
import type { Chance } from "./random";

/** Change the order or the choices of a candidate in one way, drawn by chance. */
export function changed(compiled: Compiled, from: Candidate, pool: readonly Candidate[], chance: Chance): Draft {
  const keys = new Float64Array(compiled.count);
  from.order.forEach((node, rank) => {
    keys[node] = rank;
  });
  const choices: Choices = { ...from.choices, overtime: from.choices.overtime.slice(), maker: from.choices.maker.slice(), kept: null };
  const late = lateDues(compiled, from);
  const isLate = late.weights.length > 0;
  const hasCrews = compiled.problem.makers.length > 0;
  const moves: readonly [string, number, (draft: Draft) => Draft][] = [
    ["late work first", isLate ? 4 : 0, (draft) => lift(compiled, draft, late, chance)],
    ["one node moved", 3, (draft) => insert(draft, chance)],
    ["a stretch reordered", 3, (draft) => reorder(draft, from.order, chance)],
    ["two plans mixed", pool.length > 1 ? 12 : 0, (draft) => mix(draft, pool[chance.below(pool.length)]!.order, chance)],
    ["a group moved", hasGroups(compiled) ? 2 : 0, (draft) => moveGroup(compiled, draft, chance)],
    ["another maker", hasCrews ? 3 : 0, (draft) => otherMaker(compiled, draft, chance)],
    ["overtime for late work", isLate && hasCrews ? 1 : 0, (draft) => grantOvertime(compiled, draft, late, chance)],
    ["less overtime", choices.overtime.includes(1) ? 2 : 0, (draft) => denyOvertime(draft, chance)],
    ["fittings wait for one another", compiled.problem.performers.length > 0 ? 1 : 0, (draft) => wait(draft, chance)],
  ];
  const [name, , move] = moves[chance.pick(moves.map(([, weight]) => weight))]!;
  return move({ keys, choices, name });
}

const hasGroups = ({ problem: { nodes } }: Compiled): boolean => nodes.length > 1 && nodes[0]!.group === nodes[1]!.group;

/** The nodes that another plan has in one stretch of its order take the places they have there. */
function mix(draft: Draft, other: Int32Array, chance: Chance): Draft {
  const width = Math.ceil(other.length * (0.2 + 0.4 * chance.next()));
  const first = chance.below(other.length - width + 1);
  for (let rank = first; rank < first + width; rank++) draft.keys[other[rank]!] = rank - 0.5;
  return draft;
}

interface Late {
  readonly nodes: readonly number[];
  readonly weights: readonly number[];
}

function lateDues(compiled: Compiled, { score: { schedule } }: Candidate): Late {
  const late = compiled.problem.dues
    .map(({ node, at, weight }) => ({ node, cost: schedule.isPlaced(node) ? weight * Math.max(0, schedule.end[node]! - at) : 0 }))
    .filter(({ cost }) => cost > 0);
  return { nodes: late.map(({ node }) => node), weights: late.map(({ cost }) => cost) };
}

/** What a late due waits for, or a part of it with all before that, goes earlier by the same random part of the order. */
function lift(compiled: Compiled, draft: Draft, late: Late, chance: Chance): Draft {
  const due = late.nodes[chance.pick(late.weights)]!;
  const chain = [...ancestorsOf(compiled, due)];
  const part = chance.next() < 0.3 ? chain : [...ancestorsOf(compiled, chain[chance.below(chain.length)]!)];
  shift(draft.keys, part, -draft.keys.length * chance.next() ** 2 - 0.5);
  return draft;
}

function moveGroup(compiled: Compiled, draft: Draft, chance: Chance): Draft {
  const distance = draft.keys.length * chance.next() ** 2;
  shift(draft.keys, groupOf(compiled, chance.below(draft.keys.length)), chance.next() < 0.5 ? -distance : distance);
  return draft;
}

function shift(keys: Float64Array, nodes: Iterable<number>, by: number): void {
  for (const node of nodes) keys[node] = keys[node]! + by;
}

function insert(draft: Draft, chance: Chance): Draft {
  const node = chance.below(draft.keys.length);
  const distance = 1.5 + draft.keys.length * chance.next() ** 3;
  draft.keys[node] = draft.keys[node]! + (chance.next() < 0.5 ? -distance : distance);
  return draft;
}

function reorder(draft: Draft, order: Int32Array, chance: Chance): Draft {
  const width = Math.min(order.length, 2 + chance.below(3 + Math.floor(order.length / 8)));
  const first = chance.below(order.length - width + 1);
  for (let rank = first; rank < first + width; rank++) draft.keys[order[rank]!] = first + chance.next() * width;
  return draft;
}

function otherMaker(compiled: Compiled, draft: Draft, chance: Chance): Draft {
  const node = chance.below(compiled.count);
  const seats = compiled.seats[node]!;
  if (seats.length !== 1) return insert(draft, chance);
  const skilled = compiled.skilled[seats[0]!.skill]!;
  const choice = chance.below(skilled.length + 1);
  draft.choices.maker[node] = skilled[choice] ?? -1;
  return draft;
}

function grantOvertime(compiled: Compiled, draft: Draft, late: Late, chance: Chance): Draft {
  const node = late.nodes[chance.pick(late.weights)]!;
  const share = chance.next();
  for (const before of ancestorsOf(compiled, node)) if (chance.next() < share) draft.choices.overtime[before] = 1;
  return draft;
}

function denyOvertime(draft: Draft, chance: Chance): Draft {
  const share = chance.next();
  draft.choices.overtime.forEach((allowed, node) => {
    if (allowed === 1 && chance.next() < share) draft.choices.overtime[node] = 0;
  });
  return draft;
}

function wait(draft: Draft, chance: Chance): Draft {
  const days = [0, 0.25, 1, 3, 7, 14][chance.below(6)]!;
  return { ...draft, choices: { ...draft.choices, patience: days * 1440 } };
}
