import type { GarmentWork } from "#lib/breakdown/work";
import { MINUTES_PER_DAY } from "#lib/calendar/plainDate";
import type { Garment } from "#lib/casting/wardrobe";
import type { EngineNode } from "#lib/levelling/problem";
import type { Minutes } from "#lib/units/quantities";

/** Days by the calendar for which a garment is with an outworker; null when it is made here. */
export type OutDays = (garment: Garment) => number | null;

export interface OutMinutes {
  readonly has: (garment: string) => boolean;
  /** Minutes by the clock an operation takes there; null when it is done here. */
  readonly minutes: (garment: string, operation: string) => Minutes | null;
}

/**
 * What is done out of the house: everything on the garment but its patterns, which stay with our cutters, and its fittings. The days are shared out
 * over the operations by their standard minutes, so that work side by side takes less than all of them.
 */
export const outMinutes = (garments: readonly Garment[], works: readonly GarmentWork[], days: OutDays): OutMinutes => {
  const daysOf = new Map(garments.flatMap((garment) => pair(garment.number, days(garment))));
  const minutes = new Map<string, Minutes>();
  for (const { garment, operations } of works) {
    const away = daysOf.get(garment);
    if (away === undefined) continue;
    const sent = operations.filter(({ skill }) => skill !== "pattern");
    const all = sent.reduce((sum, operation) => sum + operation.minutes[1], 0);
    for (const operation of sent)
      minutes.set(keyOf(garment, operation.code), Math.ceil((away * MINUTES_PER_DAY * operation.minutes[1]) / Math.max(1, all)));
  }
  return {
    has: (garment) => daysOf.has(garment),
    minutes: (garment, operation) => minutes.get(keyOf(garment, operation)) ?? null,
  };
};

const pair = (number: string, days: number | null): (readonly [string, number])[] => (days === null ? [] : [[number, days]]);

const keyOf = (garment: string, operation: string): string => JSON.stringify([garment, operation]);

/** Standard minutes of work that a node asks of the workroom: none of what is done out of the house. */
export const workMinutes = (node: EngineNode): Minutes => (node.kind === "task" && node.crew.length === 0 ? 0 : node.minutes);
