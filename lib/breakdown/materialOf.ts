import type { Material } from "#lib/materials/material";
import type { MakingRequest } from "./request";

/** Code of the material that fills a role (empty when nobody named one), and the material itself when it is known. */
export const materialOf = (request: MakingRequest, role: string): { readonly code: string; readonly material: Material | null } => {
  const own = request.construction.needs.find((need) => need.role === role)?.material ?? "";
  const code = request.chosen[role] || own;
  return { code, material: request.materials.get(code) ?? null };
};
