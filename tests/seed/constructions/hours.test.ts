import { describe, expect, it } from "vitest";
import { medianWork } from "#lib/breakdown/medianWork";
import type { WorkOperation } from "#lib/breakdown/work";
import hours from "./hours.json";
import { library, named } from "./library";

const SHARES: Readonly<Record<string, (operation: WorkOperation) => boolean>> = {
  "before decoration": ({ part }) => part !== "decoration",
  decoration: ({ part }) => part === "decoration",
  all: () => true,
};
const POINTS = ["low", "likely", "high"] as const;

const cases = Object.entries(hours.hours).flatMap(([code, shares]) =>
  Object.entries(shares).flatMap(([share, three]) =>
    POINTS.map((point, index) => ({ code, share, point, index, reckoned: three[index]! })),
  ),
);

describe("a garment for the median body takes the hours a workroom reckons, within a tenth", () => {
  it.each(cases)("$code, $share, $point: $reckoned h", ({ code, share, index, reckoned }) => {
    const minutes = medianWork(named(code))
      .operations.filter(SHARES[share]!)
      .reduce((sum, operation) => sum + operation.minutes[index]!, 0);
    expect(Math.abs(minutes / 60 - reckoned)).toBeLessThanOrEqual(reckoned / 10);
  });

  it.each(Object.entries(hours["steps of the classical tutu"]))("classical tutu, %s: %s h", (code, reckoned) => {
    const operation = medianWork(named("classical-tutu")).operations.find((each) => each.code === code)!;
    expect(Math.abs(operation.minutes[1] / 60 - reckoned)).toBeLessThanOrEqual(reckoned / 10);
  });
});

describe("every construction that is made", () => {
  const made = library.filter(({ code }) => !hours["few steps"].includes(code));
  it.each(made.map((construction) => [construction.code, construction] as const))(
    "%s has eight operations, four drivers and five needs or more",
    (_, construction) => {
      const work = medianWork(construction);
      expect(work.operations.length).toBeGreaterThanOrEqual(8);
      expect(work.drivers.length).toBeGreaterThanOrEqual(4);
      expect(work.needs.length).toBeGreaterThanOrEqual(5);
    },
  );

  it.each(made.map((construction) => [construction.code, construction] as const))(
    "%s states cautions and where its figures come from",
    (_, construction) => {
      expect(construction.cautions.length).toBeGreaterThan(1);
      expect(construction.source).toContain("common practice, no source");
    },
  );

  it("rises from low to high in every operation", () => {
    for (const construction of library)
      for (const { minutes } of medianWork(construction).operations) {
        expect(minutes[0]).toBeLessThanOrEqual(minutes[1]);
        expect(minutes[1]).toBeLessThanOrEqual(minutes[2]);
      }
  });
});

describe("the classical tutu", () => {
  const work = medianWork(named("classical-tutu"));
  const waits = new Map([...work.operations, ...work.fittings].map(({ code, waitsFor }) => [code, waitsFor.map(({ on }) => on).sort()]));

  it("has the fifteen operations of the trade, in its order", () => {
    expect(work.operations.map(({ code }) => code)).toEqual([
      "pattern",
      "toile",
      "cut-net",
      "gather",
      "knickers",
      "mount",
      "close",
      "steam",
      "tack",
      "bodice",
      "bones",
      "decorate",
      "join",
      "hooks",
      "press",
    ]);
  });

  it("is fitted as a toile, in cloth once skirt and bodice are joined, basted, and when the hooks are on", () => {
    expect(work.fittings.map(({ code }) => [code, waits.get(code)])).toEqual([
      ["fit-toile", ["toile"]],
      ["fit-first", ["bodice", "close"]],
      ["fit-second", ["bones", "join"]],
      ["fit-final", ["hooks"]],
    ]);
    expect([waits.get("bodice"), waits.get("bones"), waits.get("hooks"), waits.get("mount")]).toEqual([
      ["fit-toile"],
      ["fit-first"],
      ["fit-second"],
      ["gather", "knickers"],
    ]);
  });

  it("dyes its net first when it is dyed, and lets it dry before it is cut", () => {
    const dyed = medianWork(named("classical-tutu"), { dye: "whole" });
    expect(dyed.operations.find(({ code }) => code === "cut-net")?.waitsFor).toEqual([{ on: "dye", lagMinutes: 720, lagKind: "elapsed" }]);
  });
});

describe("a garment that is there already", () => {
  it("is fitted and labelled when pulled, altered when altered, and keeps to its alteration", () => {
    const pulled = medianWork(named("tunic"), {}, "pull");
    const altered = medianWork(named("tunic"), {}, "alter");
    expect([pulled.operations.map(({ code }) => code), pulled.fittings.map(({ code }) => code)]).toEqual([["label-stock"], ["fit-stock"]]);
    expect([altered.operations.map(({ code }) => code), altered.fittings.map(({ code }) => code)]).toEqual([
      ["alter", "label-stock"],
      ["fit-stock", "fit-altered"],
    ]);
    expect([pulled.needs, altered.needs]).toEqual([[], []]);
  });

  it("goes back as it came when hired", () => {
    expect(medianWork(named("tunic"), {}, "hire").notes.map(({ text }) => text)).toEqual([
      "A hired piece goes back exactly as it came: reversible alterations only.",
    ]);
  });
});
