import { describe, expect, it } from "vitest";
import { sayMetres, sayOrdinal, saySeconds, sayValue } from "./say";

describe("say", () => {
  it("names places in a set", () => {
    expect([1, 3, 12, 13, 21, 22, 111, 112].map(sayOrdinal)).toEqual([
      "first",
      "third",
      "twelfth",
      "13th",
      "21st",
      "22nd",
      "111th",
      "112th",
    ]);
  });

  it("says time and cloth in the reader's units", () => {
    expect([saySeconds(18), saySeconds(60), saySeconds(210.5)]).toEqual(["18 s", "1 min", "3 min 30.5 s"]);
    expect(sayMetres(80_000, { words: "uk", lengths: "cm" })).toBe("1 m");
    expect(sayMetres(73_152, { words: "us", lengths: "in" })).toBe("0.91 m (1 yd)");
    expect(sayValue(2032, "length", { words: "us", lengths: "in" })).toBe("1 in");
  });
});
