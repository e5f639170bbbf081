import type { Construction, NeedRule } from "#lib/constructions/construction";
import type { Chance } from "#lib/levelling/random";
import type { Material, Offer } from "#lib/materials/material";
import type { Staging } from "#lib/staging/staging";
import { LENGTH_PER_INCH, LENGTH_PER_YARD } from "#lib/units/quantities";

const SUPPLIERS = ["Harbour Nets", "Fold & Selvedge", "Bone and Busk", "Glint Trimmings"];
const ON_A_ROLL = new Set(["net", "foundation", "cloth", "lining", "stretch"]);

/** The material a need is filled with when the piece names none. */
export const materialCode = (construction: string, need: NeedRule): string =>
  need.material === "" ? `${construction}-${need.role}` : need.material;

/** Everything the constructions ask for, each from one supplier in packs, with four to twenty-one days' lead. */
export const inventGoods = (constructions: readonly Construction[], chance: Chance): Pick<Staging, "materials" | "offers"> => {
  const materials = new Map<string, Material>();
  for (const { code: construction, needs } of constructions)
    for (const need of needs) {
      const code = materialCode(construction, need);
      if (!materials.has(code)) materials.set(code, materialOf(code, need));
    }
  return { materials: [...materials.values()], offers: [...materials.values()].map((material) => offerOf(material, chance)) };
};

const materialOf = (code: string, { kind, measure }: NeedRule): Material => {
  const rolled = measure === "length" && ON_A_ROLL.has(kind);
  return {
    code,
    name: `${code.charAt(0).toUpperCase()}${code.slice(1).replaceAll("-", " ")}`,
    kind,
    measure,
    colour: "white",
    width: rolled ? 60 * LENGTH_PER_INCH : null,
    cuttable: rolled ? 58 * LENGTH_PER_INCH : null,
    shrinkage: 0,
    spare: 50,
    kerf: 0,
    keep: null,
    grain: "fixed",
  };
};

const offerOf = ({ code, measure }: Material, chance: Chance): Offer => ({
  material: code,
  supplier: SUPPLIERS[chance.below(SUPPLIERS.length)]!,
  pack: measure === "length" ? 10 * LENGTH_PER_YARD : 100,
  minimumPacks: 1,
  prices: [{ from: 1, price: 500 + 100 * chance.below(80) }],
  leadDays: 4 + chance.below(18),
  inspectionDays: chance.below(3),
  breaks: "all",
  orderCost: 0,
});
