/** Above this, following every task's descendants takes too long for what it gives. */
const MOST_TASKS = 1000;

interface Work {
  readonly duration: Int32Array;
  readonly amounts: readonly Int32Array[];
  readonly capacities: readonly number[];
}

/**
 * The least time from the start of each task to the end of all: its longest chain, and the amounts that its descendants
 * need of each resource after it, with what must follow the last of them.
 */
export function tailsOf(order: readonly number[], after: readonly (readonly number[])[], work: Work): Int32Array {
  const { duration } = work;
  const tail = new Int32Array(order.length);
  const rest = (task: number): number => tail[task]! - duration[task]!;
  for (const task of order.toReversed()) {
    const chain = after[task]!.reduce((most, next) => Math.max(most, tail[next]!), 0);
    tail[task] = duration[task]! + chain;
    if (order.length > MOST_TASKS) continue;
    const following = new Set(after[task]);
    for (const one of following) for (const next of after[one]!) following.add(next);
    const byRest = [...following].sort((a, b) => rest(b) - rest(a));
    tail[task] = duration[task]! + Math.max(chain, amountsAfter(byRest, rest, work));
  }
  return tail;
}

function amountsAfter(byRest: readonly number[], rest: (task: number) => number, { duration, amounts, capacities }: Work): number {
  let most = 0;
  amounts.forEach((amount, r) => {
    let asked = 0;
    for (const task of byRest) {
      if (amount[task] === 0) continue;
      asked += amount[task]! * duration[task]!;
      most = Math.max(most, Math.ceil(asked / capacities[r]!) + rest(task));
    }
  });
  return most;
}
