import { ascending, group } from "d3-array";
import type { GarmentWork, Need } from "#lib/breakdown/work";
import type { GarmentSet } from "#lib/casting/wardrobe";
import { allowance, sharedAllowance } from "#lib/materials/allowance";
import type { Material, Quantity } from "#lib/materials/material";
import type { PerMille } from "#lib/units/quantities";

/** A garment's need with its share of the allowance: what must be in hand for it. */
export interface NeedShare {
  readonly need: Need;
  readonly quantity: Quantity;
}

/** Everything that is needed of one material by one set that must match (or, set null, by all that need not). */
export interface Demand {
  readonly material: Material;
  readonly set: string | null;
  /** By garment, then role. */
  readonly shares: readonly NeedShare[];
  /** Sum of the needs. */
  readonly gross: Quantity;
  readonly shrinkage: Quantity;
  /** For waste, and of a set for repair. */
  readonly spare: Quantity;
  /** The part of the spare that a set keeps for repair, in its dye lot. */
  readonly repair: Quantity;
}

/** Needs rolled up, sets before the rest so that they have the first choice of the shelf; and needs of materials nobody has listed. */
export const demandsOf = (
  materials: readonly Material[],
  works: readonly GarmentWork[],
  sets: readonly Pick<GarmentSet, "code" | "repair">[] = [],
): { readonly demands: readonly Demand[]; readonly unlisted: ReadonlyMap<string, readonly Need[]> } => {
  const needs = works
    .flatMap((work) => work.needs)
    .filter((need) => need.quantity > 0)
    .sort((a, b) => ascending(a.garment, b.garment) || ascending(a.role, b.role) || ascending(a.operation, b.operation));
  const groups = group(needs, (need) => JSON.stringify([need.material, need.oneLotSet ?? ""]));
  const repairs = new Map(sets.map(({ code, repair }) => [code, repair]));
  const byCode = new Map(materials.map((material) => [material.code, material]));
  const demands: Demand[] = [];
  const unlisted = new Map<string, readonly Need[]>();
  for (const alike of groups.values()) {
    const { material: code, oneLotSet } = alike[0]!;
    const material = byCode.get(code);
    if (material) demands.push(demandOf(material, oneLotSet, alike, repairs.get(oneLotSet ?? "") ?? 0));
    else unlisted.set(code, [...(unlisted.get(code) ?? []), ...alike]);
  }
  const last = "\uffff";
  demands.sort((a, b) => ascending(a.material.code, b.material.code) || ascending(a.set ?? last, b.set ?? last));
  return { demands, unlisted };
};

const demandOf = (material: Material, set: string | null, needs: readonly Need[], repair: PerMille): Demand => {
  const quantities = needs.map((need) => need.quantity);
  const gross = quantities.reduce((sum, quantity) => sum + quantity, 0);
  const kept = { ...material, spare: material.spare + repair };
  const shares = sharedAllowance(kept, quantities);
  const { shrinkage, spare } = allowance(kept, gross);
  return {
    ...{ material, set, gross, shrinkage, spare, repair: spare - allowance(material, gross).spare },
    shares: needs.map((need, at) => ({ need, quantity: shares[at]! })),
  };
};
