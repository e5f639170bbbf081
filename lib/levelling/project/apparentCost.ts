import type { Sequence } from "./sequence";

/** Mean lengths of a job that are looked ahead. */
const LOOK_AHEAD = 2;

/** The order by apparent tardiness cost: Vepsalainen & Morton, Management Science 33 (1987) 1035-1047. */
export function byApparentCost({ minutes, weight, due }: Sequence): Int32Array {
  const count = minutes.length;
  const scale = (LOOK_AHEAD * minutes.reduce((sum, each) => sum + each, 0)) / count;
  const left = Array.from({ length: count }, (_, job) => job);
  const order = new Int32Array(count);
  let now = 0;
  for (let k = 0; k < count; k++) {
    const cost = (job: number): number => (weight[job]! / minutes[job]!) * Math.exp(-Math.max(0, due[job]! - minutes[job]! - now) / scale);
    const at = left.reduce((best, job, i) => (cost(job) > cost(left[best]!) ? i : best), 0);
    const job = left[at]!;
    left.splice(at, 1);
    order[k] = job;
    now += minutes[job]!;
  }
  return order;
}
