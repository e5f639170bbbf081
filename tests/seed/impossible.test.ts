import { readdirSync, readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { level } from "#lib/levelling/level";
import { assemble } from "#lib/planning/assemble";
import { prepare } from "#lib/planning/prepare";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { planned, seedStaging, TODAY } from "./plannedFolder";

let plan: StagingPlan;
beforeAll(async () => {
  plan = await planned("impossible", 20);
});

const late = ({ garmentStates }: StagingPlan) => garmentStates.filter(({ minutesLate }) => minutesLate > 0);

describe("the impossible staging", () => {
  it("differs from the small one in a single row, the stiff net's offer", () => {
    const folder = (name: string) => new URL(`../../seed/${name}/`, import.meta.url);
    const rows = (name: string) =>
      readdirSync(folder(name))
        .sort()
        .flatMap((file) =>
          readFileSync(new URL(file, folder(name)), "utf8")
            .split("\n")
            .map((row) => `${file}: ${row}`),
        );
    const small = rows("small");
    expect(rows("impossible").filter((row, at) => row !== small[at])).toEqual([
      "offers.csv: net-stiff-white,Harbour Nets,20 yd,1,1=58.00; 5=52.00,35,1",
    ]);
  });

  it("leaves both Lark tutus late, and names the net first, with the day it may be cut", () => {
    expect(late(plan).map(({ garment }) => garment)).toEqual(["WL 001", "WL 002"]);
    for (const { why } of late(plan)) expect(why[0]).toMatch(/^Waits .* for goods\. Stiff net: .* 35 days and may be cut Tue 16 Feb\.$/);
    const notes = plan.notes.filter(({ kind }) => kind === "late");
    expect(notes.map(({ about }) => about)).toEqual(["WL 001", "WL 002"]);
    for (const { text, mend } of notes) {
      expect(text).toContain("Stiff net");
      expect(mend).toContain("supplier who delivers sooner");
    }
  });

  it("is proved: the bound itself is late", () => {
    expect(plan.answer.bounds.weightedLateness).toBeGreaterThan(0);
  });

  it("tiles the way from release to finish with its links", () => {
    for (const { links, finish } of late(plan)) {
      expect(links[0]).toMatchObject({ cause: "delivery" });
      for (let at = 1; at < links.length; at++) expect(links[at]!.start).toBe(links[at - 1]!.end);
      expect(links.at(-1)!.end).toBe(finish);
    }
  });

  it("is in time once the cause is gone: the same staging with the net on the shelf", async () => {
    const staging = await seedStaging("impossible");
    const onShelf = { ...staging.lots[0]!, code: "N-1", material: "net-stiff-white", dyeLot: "1", quantity: 10_000_000 };
    const prepared = prepare({ ...staging, lots: [...staging.lots, onShelf] }, { today: TODAY });
    const mended = assemble(prepared, level(prepared.problem, { seed: 1, rounds: 20, stop: () => false }));
    expect(late(mended)).toEqual([]);
  });
});
