import { describe, expect, it } from "vitest";
import { countAttempts } from "./attempts";

const MINUTE = 60_000;

describe("countAttempts", () => {
  it("lets an address try until it has failed so often, then makes it wait for the rest of ten minutes", () => {
    const attempts = countAttempts(3);
    for (const at of [0, 1, 2]) {
      expect(attempts.wait("a@b.example", at * MINUTE)).toBe(0);
      attempts.failed("a@b.example", at * MINUTE);
    }
    expect(attempts.wait("A@B.example", 3 * MINUTE)).toBe(7);
    expect(attempts.wait("a@b.example", 10 * MINUTE)).toBe(0);
  });

  it("forgets failures once one has passed, and never holds one address for another's", () => {
    const attempts = countAttempts(1);
    attempts.failed("a@b.example", 0);
    expect(attempts.wait("c@b.example", 0)).toBe(0);
    attempts.passed("a@b.example");
    expect(attempts.wait("a@b.example", 0)).toBe(0);
  });
});
