import { describe, expect, it } from "vitest";
import { signingSecret } from "./secret";

describe("signingSecret", () => {
  it("refuses a missing, a short and a monotonous secret", () => {
    for (const weak of [undefined, "", "short", "a".repeat(64), "abcabcabcabcabcabcabcabcabcabcabcabc"])
      expect(() => signingSecret(weak)).toThrow("BETTER_AUTH_SECRET");
  });

  it("takes a random one as it is", () => {
    const secret = "q0Jr5u1mXwZ8d7BtY3nKf9LhV2sAe6Gc";
    expect(signingSecret(secret)).toBe(secret);
  });
});
