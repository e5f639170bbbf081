import { ascending } from "d3-array";
import type { GarmentWork, WorkOperation } from "#lib/breakdown/work";
import type { Garment } from "#lib/casting/wardrobe";
import type { Quantity } from "#lib/materials/material";
import type { Staging } from "#lib/staging/staging";

/** One garment, or the cloth for one, that goes into the vat. */
export interface DyeItem {
  readonly garment: string;
  readonly operation: string;
  /** Cloth is dyed before it is cut, a garment when it is made or bought. */
  readonly what: "cloth" | "garment";
  /** The cloth; null for a garment. */
  readonly material: string | null;
  /** What must be one colour: the cloth's colour and code, the piece, or what somebody has written down for the garment. */
  readonly colour: string;
  /** Set that must match; null when it stands alone. */
  readonly set: string | null;
  /** Length of cloth, or 1. */
  readonly load: Quantity;
}

const isDyeing = ({ skill, machine }: WorkOperation): boolean => skill === "dye" && machine === "dye vat";

/**
 * Everything that is dyed, by colour, then set, then garment. Samples, which come before, are not in it. `told` holds colours that are
 * written down for single garments: tights are dyed to their wearer's skin.
 */
export const dyeWork = (
  { materials, sets }: Pick<Staging, "materials" | "sets">,
  garments: readonly Garment[],
  works: readonly GarmentWork[],
  told: ReadonlyMap<string, string> = new Map(),
): readonly DyeItem[] => {
  const byNumber = new Map(garments.map((garment) => [garment.number, garment]));
  const colours = new Map(materials.map(({ code, colour }) => [code, colour]));
  const matching = new Set(sets.filter(({ oneDyeLot }) => oneDyeLot).map(({ code }) => code));
  return works
    .flatMap((work): readonly DyeItem[] => {
      const garment = byNumber.get(work.garment);
      const set = garment?.set && matching.has(garment.set) ? garment.set : null;
      return dyeings(work).flatMap(({ code: operation }): readonly DyeItem[] => {
        const cloth = work.needs.filter((need) => need.operation === operation && need.measure === "length");
        if (cloth.length > 0)
          return cloth.map(({ material, quantity }) => ({
            ...{ garment: work.garment, operation, what: "cloth" as const, material, set, load: quantity },
            colour: [colours.get(material), material].filter(Boolean).join(", "),
          }));
        const colour = told.get(work.garment) ?? garment?.piece ?? work.garment;
        return [{ garment: work.garment, operation, what: "garment", material: null, colour, set, load: 1 }];
      });
    })
    .sort((a, b) => ascending(a.colour, b.colour) || ascending(a.set ?? "\uffff", b.set ?? "\uffff") || ascending(a.garment, b.garment));
};

/** Dyeings that no other dyeing waits for: what comes before is a sample. */
const dyeings = ({ operations }: GarmentWork): readonly WorkOperation[] => {
  const own = operations.filter(isDyeing);
  return own.filter(({ code }) => !own.some((other) => other.waitsFor.some(({ on }) => on === code)));
};
