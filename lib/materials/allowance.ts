import type { Material, Quantity } from "./material";

/** What must be bought beyond the net need. */
export interface Allowance {
  /** So that the need is left after washing. */
  readonly shrinkage: Quantity;
  /** Waste and repair: the material's share of the washed-out quantity. */
  readonly spare: Quantity;
}

/** The one definition of what shrinkage and spare add to a need. Rounded up, once each, for the whole of it. */
export const allowance = (material: Material, need: Quantity): Allowance => {
  const shrinkage = material.measure === "length" ? Math.ceil((need * 1000) / (1000 - material.shrinkage)) - need : 0;
  return { shrinkage, spare: Math.ceil(((need + shrinkage) * material.spare) / 1000) };
};

/** The need with its allowance. */
export const withAllowance = (material: Material, need: Quantity): Quantity => {
  const { shrinkage, spare } = allowance(material, need);
  return need + shrinkage + spare;
};

/** Shares a whole allowance out over needs in their order, so that the shares add up to it exactly and none is negative. */
export const sharedAllowance = (material: Material, needs: readonly Quantity[]): readonly Quantity[] => {
  let before = 0;
  return needs.map((need) => {
    const share = withAllowance(material, before + need) - withAllowance(material, before);
    before += need;
    return share;
  });
};
