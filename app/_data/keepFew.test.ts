import { describe, expect, it } from "vitest";
import { keepFew } from "./keepFew";

describe("keepFew", () => {
  it("computes a value once while it is kept, and drops the one used longest ago", async () => {
    const computed: string[] = [];
    const keep = keepFew<string>(2);
    const get = (key: string) =>
      keep(key, async () => {
        computed.push(key);
        return key;
      });
    for (const key of ["a", "b", "a", "c", "a", "b"]) await get(key);
    expect(computed).toEqual(["a", "b", "c", "b"]);
  });
});
