import { describe, expect, it } from "vitest";
import { medianWork } from "#lib/breakdown/medianWork";
import type { Source } from "#lib/casting/wardrobe";
import trade from "./alterations.json";
import { named } from "./library";

const altered = (parameters: Readonly<Record<string, string>>, source: Source = "alter") =>
  medianWork(named("alterations"), { relabel: "no", ...parameters }, source);
const hoursOf = (work: ReturnType<typeof altered>) =>
  [0, 1, 2].map((point) => work.operations.reduce((sum, { minutes }) => sum + minutes[point]!, 0) / 60);

describe("an alteration to a stock piece takes the hours a workroom reckons", () => {
  it.each(trade.alterations)("$parameter $to", ({ parameter, to, operation, hours, likely }) => {
    const work = altered({ [parameter]: to });
    expect(work.operations.map(({ code }) => code)).toEqual([operation]);
    if (hours) expect(hoursOf(work)).toEqual(hours);
    else expect(hoursOf(work)[1]).toBe(likely);
  });

  it("adds one fitting, before all else, however many are asked for", () => {
    const work = altered({ barRows: "2", sides: "4 cm", straps: "yes", relabel: "yes" });
    expect(work.fittings.map(({ kind, minutes, waitsFor }) => [kind, minutes, waitsFor])).toEqual([["cover", 15, []]]);
    const before = work.operations.map(({ code, waitsFor }) => [code, waitsFor.map(({ on }) => on)]);
    expect(before).toEqual([
      ["bars", ["fit-stock"]],
      ["sides", ["fit-stock"]],
      ["straps", ["fit-stock"]],
      ["relabel", ["fit-stock", "bars", "sides", "straps"]],
    ]);
  });

  it.each(trade["beyond reach"])("is refused beyond its reach: $parameter $to", ({ parameter, to }) => {
    expect(altered({ [parameter]: to }).notes.map(({ text }) => text)).toContainEqual(expect.stringMatching(/is outside 0/));
  });

  it("of a hired piece is only what can be undone", () => {
    const every = Object.fromEntries(trade.alterations.map(({ parameter, to }) => [parameter, to]));
    expect(altered(every, "hire").operations.map(({ code }) => code)).toEqual(["bars", "straps", "leg-elastic", "headpiece", "relabel"]);
  });
});
