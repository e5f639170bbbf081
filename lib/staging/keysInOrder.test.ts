import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { keysInOrder } from "./keysInOrder";

describe("keysInOrder", () => {
  it("changes no value, and writes alike what is alike", () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (value) => {
        const turned = Object.fromEntries(Object.entries(value).toReversed());
        expect(keysInOrder(value)).toEqual(value);
        expect(JSON.stringify(keysInOrder(turned))).toBe(JSON.stringify(keysInOrder(value)));
      }),
    );
  });
});
