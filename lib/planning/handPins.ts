import type { WallMinute } from "#lib/calendar/plainDate";
import type { EngineNode } from "#lib/levelling/problem";
import { toAxis } from "./axis";
import type { Prepared } from "./prepared";

/** A task or a fitting that somebody has put in its place by hand: levelling leaves it there. */
export interface HandPin {
  /** Stable key of the node. */
  readonly key: string;
  /** Codes of those who work, in the order of the crew; for a fitting its fitter. */
  readonly makers: readonly string[];
  /** Code of the room, for a fitting. */
  readonly room: string | null;
  readonly start: WallMinute;
}

/**
 * The work with what was fixed by hand fixed. A pin of work that is no longer there, or of somebody who is not, holds nothing and is
 * passed over: the work is levelled as if it were free.
 */
export const withHandPins = (prepared: Prepared, pins: readonly HandPin[]): Prepared => {
  if (pins.length === 0) return prepared;
  const { problem, axis } = prepared;
  const pinOf = new Map(pins.map((pin) => [pin.key, pin]));
  const makers = new Map(problem.makers.map(({ id }, at) => [id, at]));
  const rooms = new Map(problem.rooms.map(({ id }, at) => [id, at]));
  const pinned = problem.nodes.map((node, at): EngineNode => {
    const pin = pinOf.get(prepared.nodes[at]!.key);
    if (!pin) return node;
    const start = toAxis(axis, pin.start);
    const who = pin.makers.flatMap((code) => makers.get(code) ?? []);
    if (who.length < pin.makers.length) return node;
    if (node.kind === "task") return { ...node, pin: { makers: who, start } };
    const room = rooms.get(pin.room ?? "");
    return room === undefined || who[0] === undefined ? node : { ...node, pin: { fitter: who[0], room, start } };
  });
  return { ...prepared, problem: { ...problem, nodes: pinned } };
};
