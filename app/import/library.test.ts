import { describe, expect, it } from "vitest";
import type { Construction } from "#lib/constructions/construction";
import { withConstructions } from "./library";

const kept = { code: "tunic", version: 3 } as Construction;

describe("withConstructions", () => {
  it("takes what is not given from the company, and what the company has not from the library", async () => {
    const all = await withConstructions(new Map([["pieces.csv", "code\n"]]), [kept]);
    expect(all.get("constructions/tunic.json")).toBe('{"code":"tunic","version":3}');
    expect(all.has("tunic.json")).toBe(false);
    expect(JSON.parse(all.get("headpiece.json") ?? "null")).toMatchObject({ code: "headpiece" });
  });

  it("leaves what is given as it is", async () => {
    const all = await withConstructions(new Map([["Tunic/tunic.json", "mine"]]), [kept]);
    expect([...all.entries()].filter(([name]) => /(^|\/)tunic\.json$/i.test(name))).toEqual([["Tunic/tunic.json", "mine"]]);
  });
});
