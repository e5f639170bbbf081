import { LENGTH_PER_MM, type Length } from "#lib/units/quantities";
import type { Material, MaterialKind, Quantity } from "./material";

const STIFF: ReadonlySet<MaterialKind> = new Set(["bone", "hoop", "wire"]);

/** Rods and coils: what comes out of one pack cannot be joined to the next, and a lot of it is so many pieces. */
export const isStiff = ({ kind }: Material): boolean => STIFF.has(kind);

const METRE: Length = 1000 * LENGTH_PER_MM;

/**
 * Length of the single piece one pack holds (a rod, a coil, a bolt); null when it is cut to order from one long length. Soft goods whose
 * pack is a metre or a yard at most are sold by the metre (common practice, no source).
 */
export const stockLength = (material: Material, pack: Quantity): Length | null => {
  if (material.measure === "count") return null;
  return isStiff(material) || pack > METRE ? pack : null;
};

/** What is left of a length once it has been washed: the part that may be cut. */
export const afterWashing = (material: Material, length: Length): Length =>
  material.measure === "length" ? Math.floor((length * (1000 - material.shrinkage)) / 1000) : length;
