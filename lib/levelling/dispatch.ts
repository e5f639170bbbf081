import type { Compiled } from "./compiled";
import type { Outlook } from "./outlook";

/** Nodes up to which a list is dispatched step by step: its work grows with their square. */
export const MOST_DISPATCHED = 600;

/**
 * Apparent tardiness cost, dispatched (Vepsalainen & Morton 1987): always the node whose weighted urgency at that moment is
 * greatest, with time moving on as a workroom does that finishes everything by `finish`. Returns keys.
 */
export function dispatched(compiled: Compiled, outlook: Outlook, finish: number, lookAhead: number): Float64Array {
  const { count, links } = compiled;
  const { length, latest, weight } = outlook;
  const total = length.reduce((sum, one) => sum + one, 0);
  const pace = total > 0 ? finish / total : 1;
  const average = total / Math.max(1, count);
  const keys = new Float64Array(count);
  const missing = new Int32Array(count);
  for (const after of links.after) missing[after] = missing[after]! + 1;
  const ready = Array.from({ length: count }, (_, node) => node).filter((node) => missing[node] === 0);
  let now = 0;
  for (let rank = 0; ready.length > 0; rank++) {
    let chosen = 0;
    let most = Number.NEGATIVE_INFINITY;
    ready.forEach((node, i) => {
      const own = Math.max(1, length[node]!);
      const slack = Math.max(0, latest[node]! - own - now);
      const urgency = Math.log(Math.max(1e-9, weight[node]!) / own) - slack / (lookAhead * average * pace + 1e-9);
      if (urgency > most) {
        most = urgency;
        chosen = i;
      }
    });
    const [node] = ready.splice(chosen, 1);
    keys[node!] = rank;
    now += length[node!]! * pace;
    for (let i = links.outFirst[node!]!; i < links.outFirst[node! + 1]!; i++) {
      const after = links.after[links.out[i]!]!;
      missing[after] = missing[after]! - 1;
      if (missing[after] === 0) ready.push(after);
    }
  }
  return keys;
}
