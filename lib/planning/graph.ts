import type { GarmentWork, WorkWait } from "#lib/breakdown/work";
import type { Garment, GarmentSet } from "#lib/casting/wardrobe";
import type { Precedence } from "#lib/levelling/problem";
import { type Batch, batches } from "./batches";
import type { PlanNode } from "./stagingPlan";

/** What is to be done and in which order, before anybody is asked to do it. */
export interface Graph {
  readonly nodes: readonly PlanNode[];
  /** The batch of each operation node, by node. */
  readonly batchOf: ReadonlyMap<number, Batch>;
  readonly precedences: readonly Precedence[];
  /** Nodes of an operation or fitting of a garment (a fitting has one for each wearer). */
  readonly find: (garment: string, code: string) => readonly number[];
  /** Undefined for a garment without work. */
  readonly finished: (garment: string) => number | undefined;
}

/**
 * Operations (batched), fittings and the finish of each garment, with their waits. A batch waits for all its garments, and they for it.
 * A garment without work (hired, bought, pulled as it is) has no nodes.
 */
export const makeGraph = (
  garments: readonly Garment[],
  works: readonly GarmentWork[],
  sets: readonly GarmentSet[],
  isOut: (garment: string) => boolean = () => false,
): Graph => {
  const nodes: PlanNode[] = [];
  const batchOf = new Map<number, Batch>();
  const places = new Map<string, number[]>();
  const add = (node: PlanNode, garment: string, code: string) => {
    places.set(placeKey(garment, code), [...(places.get(placeKey(garment, code)) ?? []), nodes.length]);
    return nodes.push(node) - 1;
  };
  const find = (garment: string, code: string) => places.get(placeKey(garment, code)) ?? [];

  const working = works.filter((work) => work.operations.length + work.fittings.length > 0);
  for (const batch of batches(garments, working, sets, isOut)) {
    const { code } = batch.operation;
    const [first, ...others] = batch.garments as [string, ...string[]];
    const node = add({ key: batchKey(batch), kind: "operation", garments: batch.garments, operation: code }, first, code);
    for (const other of others) places.set(placeKey(other, code), [node]);
    batchOf.set(node, batch);
  }
  const waiting: { readonly after: number; readonly garment: string; readonly waitsFor: readonly WorkWait[] }[] = [];
  for (const { garment, operations, fittings } of working) {
    for (const { code, waitsFor } of operations) waiting.push({ after: find(garment, code)[0]!, garment, waitsFor });
    for (const { code, wearer, waitsFor } of fittings) {
      const node: PlanNode = { key: fittingKey(garment, code, wearer), kind: "fitting", garment, fitting: code, wearer };
      waiting.push({ after: add(node, garment, code), garment, waitsFor });
    }
  }

  const waits = new Map<string, Precedence>();
  const wait = (one: Precedence) => {
    // Garments of a batch repeat each other's waits: of two between the same nodes the longer one holds.
    const key = `${one.before} ${one.after} ${one.lagKind}`;
    if ((waits.get(key)?.lag ?? -1) < one.lag) waits.set(key, one);
  };
  for (const { after, garment, waitsFor } of waiting)
    for (const { on, lagMinutes, lagKind } of waitsFor)
      for (const before of find(garment, on)) wait({ before, after, lag: lagMinutes, lagKind, maxLag: null });
  for (const { garment, operations, fittings } of working) {
    const end = add({ key: `${garment}/finished`, kind: "finished", garment }, garment, FINISHED);
    const waitedFor = new Set([...operations, ...fittings].flatMap((one) => one.waitsFor.map(({ on }) => on)));
    const lasts = [...operations, ...fittings].filter(({ code }) => !waitedFor.has(code));
    for (const before of lasts.flatMap(({ code }) => find(garment, code))) wait(straightAfter(before, end));
  }
  return { nodes, batchOf, precedences: [...waits.values()], find, finished: (garment) => find(garment, FINISHED)[0] };
};

export const straightAfter = (before: number, after: number): Precedence => ({ before, after, lag: 0, lagKind: "elapsed", maxLag: null });

const FINISHED = "*finished";
const placeKey = (garment: string, code: string) => JSON.stringify([garment, code]);
const fittingKey = (garment: string, code: string, wearer: number) => `${garment}/${code}${wearer === 0 ? "" : `~${wearer + 1}`}`;
const batchKey = ({ garments, operation }: Batch) =>
  garments.length === 1
    ? `${garments[0]}/${operation.code}`
    : `${garments[0]!.replaceAll(" ", "-")}+${garments.length - 1}/${operation.code}`;
