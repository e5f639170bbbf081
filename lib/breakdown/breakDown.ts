import type { Garment, Wearer } from "#lib/casting/wardrobe";
import type { Construction } from "#lib/constructions/construction";
import { versionMeant } from "#lib/constructions/versions";
import type { Material } from "#lib/materials/material";
import { bodyOf } from "#lib/measurements/body";
import type { Staging } from "#lib/staging/staging";
import { breakDownOne } from "./breakDownOne";
import { FormulaReader } from "./formulaReader";
import type { GarmentWork, WorkNote } from "./work";

/** All garments of a staging broken down, in the order given. */
export const breakDown = (staging: Staging, garments: readonly Garment[]): readonly GarmentWork[] => {
  const materials = new Map(staging.materials.map((material) => [material.code, material]));
  const formulas = new FormulaReader();
  return garments.map((garment) => {
    if (garment.construction === null) return untouched(garment, []);
    const construction = versionMeant(staging.constructions, garment.construction, garment.version);
    const named =
      garment.version === null ? `construction "${garment.construction}"` : `version ${garment.version} of "${garment.construction}"`;
    const text = `There is no ${named}: no work and no material is planned. Add it, or name another.`;
    return construction
      ? made(staging, garment, construction, materials, formulas)
      : untouched(garment, [{ garment: garment.number, kind: "parameter", text }]);
  });
};

/** A garment that needs no work of the workroom. */
const untouched = ({ number }: Garment, notes: readonly WorkNote[]): GarmentWork => ({
  garment: number,
  construction: null,
  drivers: [],
  operations: [],
  fittings: [],
  needs: [],
  layers: [],
  notes,
});

const made = (
  staging: Staging,
  garment: Garment,
  construction: Construction,
  materials: ReadonlyMap<string, Material>,
  formulas: FormulaReader,
): GarmentWork => {
  const wearer = garment.wearers[0];
  const body = wearer ? bodyOf(staging, wearer) : null;
  const set = staging.sets.find(({ code }) => code === garment.set);
  const work = breakDownOne(
    {
      garment: garment.number,
      construction,
      source: garment.source,
      parameters: garment.parameters,
      body: body?.values ?? {},
      chosen: garment.materials,
      materials,
      ordinal: garment.ordinal,
      oneLotSet: set?.oneDyeLot ? set.code : null,
      wearers: garment.wearers.length,
      reader: { words: staging.production.words, lengths: staging.production.lengths },
    },
    formulas,
  );
  const used = body?.fallbacks.filter((measurement) => construction.medianBody[measurement] !== undefined) ?? [];
  if (!wearer || used.length === 0 || garment.source !== "build") return work;
  return { ...work, notes: [{ garment: garment.number, kind: "measurement", text: fallbackText(wearer, used) }, ...work.notes] };
};

const fallbackText = ({ performer, sizeGroup }: Wearer, measurements: readonly string[]): string =>
  performer === null
    ? `Not cast yet: ${measurements.join(", ")} from size group ${sizeGroup}.`
    : `No ${measurements.join(", ")} of ${performer} on the newest sheet; taken from size group ${sizeGroup}.`;
