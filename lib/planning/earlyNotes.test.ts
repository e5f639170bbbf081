import { describe, expect, it } from "vitest";
import type { Construction } from "#lib/constructions/construction";
import { earlyNotes } from "./earlyNotes";
import { garment, staging, work } from "./fixtures";

const skirt = (version: number, ...cautions: readonly string[]): Construction => ({
  code: "skirt",
  version,
  name: { uk: "Skirt", us: "Skirt" },
  source: "Invented for tests.",
  cautions,
  medianBody: {},
  parameters: [],
  layers: [],
  drivers: [],
  operations: [],
  fittings: [],
  needs: [],
});

describe("cautions", () => {
  const constructions = [skirt(1, "Mind the steam."), skirt(2, "Mind the steam.", "Mind the flame."), skirt(3, "Mind the dye.")];
  const cautions = (...versions: readonly number[]) => {
    const works = versions.map((version, at) => ({ ...work(`X ${at + 1}`, []), construction: { code: "skirt", version } }));
    return earlyNotes(
      staging({ constructions }),
      works.map((one) => garment(one.garment)),
      works,
    ).map(({ about, text }) => `${about}: ${text}`);
  };

  it("are those of the versions that garments are made by, each told once", () => {
    expect(cautions(1)).toEqual(["skirt: Mind the steam."]);
    expect(cautions(1, 2, 2)).toEqual(["skirt: Mind the steam.", "skirt: Mind the flame."]);
    expect(cautions()).toEqual([]);
  });
});
