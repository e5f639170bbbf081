import { describe, expect, it } from "vitest";
import { breakDownOne } from "#lib/breakdown/breakDownOne";
import { sourceOf } from "#lib/breakdown/medianWork";
import { withoutBody } from "#lib/breakdown/withoutBody";
import type { GarmentWork } from "#lib/breakdown/work";
import type { Construction } from "#lib/constructions/construction";
import type { MeasurementValues } from "#lib/measurements/measurement";
import { readLength } from "#lib/units/readLength";
import { library } from "./library";

const SHARES = [0.92, 0.97, 1, 1.04, 1.11];

const medianOf = (construction: Construction, share: number): MeasurementValues =>
  Object.fromEntries(
    Object.entries(construction.medianBody).map(([measurement, text]) => {
      const read = readLength(text);
      return [measurement, read.ok ? Math.round(read.value * share) : 0];
    }),
  );

const workFor = (construction: Construction, share: number): GarmentWork =>
  breakDownOne({
    garment: "T 1",
    construction,
    source: sourceOf(construction),
    parameters: {},
    body: medianOf(construction, share),
    chosen: {},
    materials: new Map(),
    ordinal: 1,
    oneLotSet: null,
    wearers: 1,
    reader: { words: "uk", lengths: "cm" },
  });

/** All that is written or drawn of a garment; how long it takes and how much is bought may follow the body. */
const written = (work: GarmentWork) => ({
  drivers: work.drivers,
  layers: work.layers,
  operations: work.operations.map(({ code, arithmetic }) => [code, arithmetic]),
  needs: work.needs.map(({ role, cuts, arithmetic }) => [role, cuts, arithmetic]),
  notes: work.notes,
});

describe("what is shown to those who may not see measurements", () => {
  it.each(library.map((construction) => [construction.code, construction] as const))(
    "is the same for every body: %s",
    (_, construction) => {
      const shown = SHARES.map((share) => written(withoutBody(workFor(construction, share), construction)));
      for (const one of shown) expect(one).toEqual(shown[0]);
    },
  );

  it("would tell bodies apart were it not withheld", () => {
    const tutu = library.find(({ code }) => code === "classical-tutu")!;
    expect(written(workFor(tutu, 0.92))).not.toEqual(written(workFor(tutu, 1)));
  });
});
