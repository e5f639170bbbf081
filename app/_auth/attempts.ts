/** Failed tries at signing in, by e-mail address, in this process. */
export interface Attempts {
  /** Minutes to wait before another try is taken; 0 when one may try now. */
  readonly wait: (email: string, now: number) => number;
  readonly failed: (email: string, now: number) => void;
  readonly passed: (email: string) => void;
}

const ALLOWED = 5;
const WINDOW = 10 * 60_000;
const MOST_ADDRESSES = 10_000;

/** After `allowed` failures within ten minutes the address waits until the oldest of them is ten minutes past. */
export const countAttempts = (allowed: number): Attempts => {
  const failures = new Map<string, number[]>();
  const recent = (email: string, now: number) => (failures.get(email.toLowerCase()) ?? []).filter((at) => now - at < WINDOW);
  return {
    wait: (email, now) => {
      const past = recent(email, now);
      const oldest = past.at(-allowed);
      return oldest === undefined ? 0 : Math.ceil((oldest + WINDOW - now) / 60_000);
    },
    failed: (email, now) => {
      if (failures.size >= MOST_ADDRESSES) failures.clear();
      failures.set(email.toLowerCase(), [...recent(email, now), now]);
    },
    passed: (email) => {
      failures.delete(email.toLowerCase());
    },
  };
};

/** Tries counted by this server. */
export const attempts = countAttempts(ALLOWED);
