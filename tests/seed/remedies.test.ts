import { spawnSync } from "node:child_process";
import { beforeAll, describe, expect, it } from "vitest";
import { level } from "#lib/levelling/level";
import type { PlanOptions } from "#lib/planning/planStaging";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { candidates } from "#lib/whatif/remedies/candidates";
import { readRemedy } from "#lib/whatif/remedies/readRemedy";
import { tryRemedy } from "#lib/whatif/remedies/tryRemedy";
import { type WhatHelps, whatHelps } from "#lib/whatif/remedies/whatHelps";
import { planned, TODAY } from "./plannedFolder";

const OPTIONS: PlanOptions = { today: TODAY, level: (problem) => level(problem, { seed: 1, rounds: 2, stop: () => false }) };

let impossible: StagingPlan;
let small: StagingPlan;
let helps: WhatHelps;
beforeAll(async () => {
  impossible = await planned("impossible", 10);
  small = await planned("small", 10);
  helps = await whatHelps(impossible, candidates(impossible, TODAY), OPTIONS);
});

const remedy = (plan: StagingPlan, kind: Parameters<typeof readRemedy>[0], given: Record<string, string>) => {
  const read = readRemedy(kind, given, plan.staging, TODAY);
  if (!read.ok) throw new Error(read.error);
  return read.value;
};

describe("what would help the impossible staging", () => {
  it("is tried: the net sooner, more hands and overtime for what waits, a second fitting room, less decoration", () => {
    expect(new Set(candidates(impossible, TODAY).map(({ kind }) => kind))).toEqual(
      new Set(["deliver", "maker", "overtime", "machine", "simplify"]),
    );
  });

  it("is the net sooner, and nothing else brings both Lark tutus in time", () => {
    const [first, ...others] = helps.answers;
    expect(first).toMatchObject({ remedy: { kind: "deliver", material: "net-stiff-white" }, asks: "Stiff net 13 days sooner" });
    expect(first!.tried).toMatchObject({ figures: { lateGarments: 0 }, mended: ["WL 001", "WL 002"], spoiled: [] });
    for (const { tried } of others) expect(tried?.figures.lateGarments).toBeGreaterThan(0);
  });

  it("each is laid beside the plan searched on for as long, unchanged", () => {
    expect(helps.unchanged).toMatchObject({ lateGarments: 2, weightedLateness: helps.now.weightedLateness });
  });

  it("three days sooner is not enough, and less late than nothing", async () => {
    const tried = await tryRemedy(impossible, remedy(impossible, "deliver", { material: "net-stiff-white", days: "3" }), OPTIONS);
    expect(tried.ok && tried.value.figures.lateGarments).toBe(2);
    expect(tried.ok && tried.value.figures.weightedLateness).toBeLessThan(helps.unchanged.weightedLateness);
  });
});

describe("what would help the small staging, which is in time", () => {
  it("nothing is suggested", () => {
    expect(candidates(small, TODAY)).toEqual([]);
  });

  /** Nothing is dyed here. The hours and the pay are those of Ilka, the one who can: Tue to Thu, seven hours, at 19.00; ten days are 70 h, 1330.00. */
  it("more hands are paid for all their hours, though there be nothing for them to do", async () => {
    const still: PlanOptions = { today: TODAY, level: (problem) => level(problem, { seed: 1, rounds: 0, stop: () => false }) };
    const tried = await tryRemedy(small, remedy(small, "maker", { skill: "dye", days: "10" }), still);
    if (!tried.ok) throw new Error(tried.error);
    expect(tried.value.moved).toBe(0);
    expect(tried.value.figures.cost - small.summary.labourCost - small.summary.materialCost).toBe(133_000);
  });

  it("Hazel's bodice out of the house costs its price, and its makers' hours no longer", async () => {
    const tried = await tryRemedy(small, remedy(small, "outwork", { what: "hazel-bodice", price: "90.00", days: "14" }), OPTIONS);
    if (!tried.ok) throw new Error(tried.error);
    expect(tried.value.figures.lateGarments).toBe(0);
    expect(tried.value.figures.cost).toBeLessThan(small.summary.labourCost + small.summary.materialCost);
  });

  it("what cannot be read is said in one sentence", () => {
    const wrong = (kind: Parameters<typeof readRemedy>[0], given: Record<string, string>) => {
      const read = readRemedy(kind, given, small.staging, TODAY);
      return read.ok ? "" : read.error;
    };
    expect(wrong("maker", { skill: "nett", days: "5" })).toMatch(/no skill "nett".*"net"/);
    expect(wrong("maker", { skill: "net", days: "0" })).toMatch(/"0" is not a number of days/);
    expect(wrong("overtime", { who: "delia", hours: "six" })).toMatch(/"six"/);
    expect(wrong("outwork", { what: "moon", price: "1.00", days: "3" })).toMatch(/"moon"/);
    expect(wrong("simplify", { piece: "lark-tutu", parameter: "motifs", value: "9999" })).toMatch(/motifs is from/);
    expect(wrong("deliver", { material: "moon", days: "3" })).toMatch(/no material/);
  });
});

describe("the remedies command", () => {
  const run = (...args: readonly string[]) =>
    spawnSync(process.execPath, ["--import", "tsx", "app/_cli/main.ts", "remedies", ...args], {
      cwd: new URL("../..", import.meta.url).pathname,
      encoding: "utf8",
    });

  it("says why, and puts the net first", () => {
    const { status, stdout } = run(
      "seed/impossible",
      "--rounds",
      "1",
      "--today",
      "2027-01-11",
      "--sooner",
      "net-stiff-white:13",
      "--one-more",
      "fitting room",
    );
    expect(status).toBe(0);
    expect(stdout).toMatch(/^WL 001 is late\. Waits .* for goods\. Stiff net/m);
    expect(stdout).toMatch(/Nothing changed +2 [^\n]*\n +Stiff net 13 days sooner +0 [^\n]*\n +One more fitting room +2 /);
  });

  it("refuses what it cannot read", () => {
    const { status, stderr } = run("seed/small", "--rounds", "0", "--today", "2027-01-11", "--hands", "nett:10");
    expect([status, stderr.includes('There is no skill "nett"')]).toEqual([2, true]);
  });
});
