import type { CuttingPlan } from "#lib/cutting/cuttingPlan";
import { MATERIAL_KINDS, type MaterialKind } from "#lib/materials/material";
import type { LengthSystem } from "#lib/units/showLength";
import { plural } from "../../../../_data/plural";
import { showQuantity } from "../../../../_data/quantity";

const RODS: ReadonlySet<MaterialKind> = new Set(MATERIAL_KINDS.filter((kind) => ["bone", "hoop", "wire"].includes(kind)));

/** What one stock of a material is called. */
export const stockWord = (kind: MaterialKind | undefined): string => (kind && RODS.has(kind) ? "rod or coil" : "roll");

/** How good a plan is known to be: a proof, or how far it may be from the best. */
export const proofWords = (plan: CuttingPlan, lengths: LengthSystem, kind: MaterialKind | undefined): string => {
  if (plan.proved) return "Proved: no plan needs less.";
  if (plan.lengthBound !== null && plan.stock === null)
    return `No plan needs less than ${showQuantity(plan.lengthBound, "length", lengths)}; this takes ${showQuantity(plan.used, "length", lengths)}.`;
  const word = stockWord(kind);
  return `No plan needs fewer than ${plural(plan.bound, word, word === "roll" ? "rolls" : "rods or coils")}; this takes ${plan.count}.`;
};
