import { describe, expect, it } from "vitest";
import { firstNeeding } from "./dyedFirst";

const operations = [
  { code: "sample", skill: "dye" },
  { code: "dye", skill: "dye" },
  { code: "cut", skill: "net" },
  { code: "sew", skill: "hand" },
  { code: "dip", skill: "dye" },
  { code: "trim", skill: "hand" },
];
const waits = new Map([
  ["dye", [{ on: "sample" }]],
  ["cut", [{ on: "dye" }]],
  ["sew", [{ on: "cut" }]],
  ["dip", [{ on: "sew" }]],
  ["trim", [{ on: "dip" }]],
]);
const first = (kind: "net" | "trim" | "ribbon", operation: string, own = waits) => firstNeeding({ kind, operation }, operations, own);

describe("the operation that first needs cloth", () => {
  it("is the dyeing, where cloth is dyed before it is cut", () => expect(first("net", "cut")).toBe("dye"));
  it("is its own, where the made thing is dyed, where nothing is dyed, and for what takes no colour", () => {
    expect(first("ribbon", "trim")).toBe("trim");
    expect(first("net", "cut", new Map())).toBe("cut");
    expect(first("trim", "cut")).toBe("cut");
  });
});
