/** Most states kept. */
const MOST = 400_000;

/**
 * States from which nothing was found, so that no other way to the same set of begun tasks with nothing free sooner has to
 * be followed: the cutset rule of Demeulemeester & Herroelen, Management Science 38 (1992) 1803-1818.
 */
export class Failures {
  private readonly states = new Map<number, Int32Array[]>();
  private kept = 0;

  /** `state`: the time, then pairs of a running task and its finish. */
  add(begun: number, state: Int32Array): void {
    if (this.kept >= MOST) return;
    this.kept++;
    const same = this.states.get(begun);
    if (same === undefined) this.states.set(begun, [state]);
    else same.push(state);
  }

  /** True when a failed state with the same tasks begun was at least as early in all. */
  covers(begun: number, now: number, finish: Int32Array): boolean {
    const same = this.states.get(begun);
    return same?.some((state) => earlier(state, now, finish)) ?? false;
  }
}

function earlier(state: Int32Array, now: number, finish: Int32Array): boolean {
  if (state[0]! > now) return false;
  for (let i = 1; i < state.length; i += 2) {
    const until = state[i + 1]!;
    if (until > now && until > finish[state[i]!]!) return false;
  }
  return true;
}
