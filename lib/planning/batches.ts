import type { GarmentWork, WorkOperation } from "#lib/breakdown/work";
import type { Garment, GarmentSet } from "#lib/casting/wardrobe";
import type { Minutes } from "#lib/units/quantities";

/** Two days of eight hours: a longer batch would tie one person up while others wait for all of it. */
const LONGEST_BATCH: Minutes = 960;

/** One operation on one or more garments, as one piece of work. */
export interface Batch {
  readonly operation: WorkOperation;
  /** In the order of the set. */
  readonly garments: readonly string[];
  /** Standard minutes: the longest set-up once, and each garment's own time without its set-up. */
  readonly minutes: Minutes;
}

interface Member {
  readonly garment: Garment;
  readonly operation: WorkOperation;
}

/**
 * Every operation of every garment, once. Garments of a set with the same construction are worked together where the operation allows it,
 * in the order of the set, in batches of at most two days. A prototype that is still to be approved is worked alone, ahead of the rest, and so is
 * what goes out of the house.
 */
export const batches = (
  garments: readonly Garment[],
  works: readonly GarmentWork[],
  sets: readonly GarmentSet[],
  isOut: (garment: string) => boolean = () => false,
): Batch[] => {
  const garmentOf = new Map(garments.map((garment) => [garment.number, garment]));
  const groups = new Map<string, Member[]>();
  for (const work of works) {
    const garment = garmentOf.get(work.garment)!;
    for (const operation of work.operations) {
      const together = operation.batch && garment.set !== null && !awaitsApproval(garment, sets) && !isOut(garment.number);
      const key = JSON.stringify([together ? [garment.set, garment.construction] : garment.number, operation.code]);
      groups.set(key, [...(groups.get(key) ?? []), { garment, operation }]);
    }
  }
  return [...groups.values()].flatMap((members) => portions(members.sort((a, b) => a.garment.ordinal - b.garment.ordinal)));
};

/** Whether this is a prototype nobody has approved yet. */
export const awaitsApproval = (garment: Garment, sets: readonly GarmentSet[]): boolean => {
  const set = sets.find((one) => one.code === garment.set);
  return garment.prototype && set?.prototype === true && set.approvedOn === null;
};

const portions = (members: readonly Member[]): Batch[] => {
  const result: Batch[] = [];
  let open: Member[] = [];
  for (const member of members) {
    if (open.length > 0 && batchMinutes([...open, member]) > LONGEST_BATCH) {
      result.push(closed(open));
      open = [];
    }
    open.push(member);
  }
  return open.length > 0 ? [...result, closed(open)] : result;
};

const closed = (members: readonly Member[]): Batch => ({
  operation: members[0]!.operation,
  garments: members.map((member) => member.garment.number),
  minutes: batchMinutes(members),
});

const batchMinutes = (members: readonly Member[]): Minutes =>
  Math.max(...members.map(({ operation }) => operation.setup[1])) +
  members.reduce((sum, { operation }) => sum + operation.minutes[1] - operation.setup[1], 0);
