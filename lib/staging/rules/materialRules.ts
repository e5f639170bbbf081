import type { Measure } from "#lib/materials/material";
import type { WrittenQuantity } from "../cells/numbers";
import { faultIn, type Rule } from "./rule";

export const widthRule: Rule = ({ materials }) =>
  materials.flatMap(({ row, values: { width, cuttable } }) => {
    if (width === undefined || cuttable === undefined || cuttable === null) return [];
    if (width === null) return [faultIn("materials.csv", row, "width", "It has a cuttable width and no width.", "Write the full width.")];
    return cuttable > width
      ? [faultIn("materials.csv", row, "cuttable", "More can be cut than there is.", "Write at most the full width.")]
      : [];
  });

/** A quantity is measured as its material is. */
const measured = (file: string, row: number, column: string, written: WrittenQuantity | undefined, measure: Measure | undefined) => {
  if (!written || !measure) return [];
  if (written.measure !== measure)
    return [
      faultIn(
        file,
        row,
        column,
        measure === "length" ? "The material is measured by length." : "The material is counted.",
        measure === "length" ? "Write a length with its unit, like 25 yd or 20 m." : "Write a whole number.",
      ),
    ];
  return [];
};

export const offerRules: Rule = ({ offers, materials }) => {
  const measures = new Map(materials.map(({ values }) => [values.code, values.measure]));
  return offers.flatMap(({ row, values: { material, pack, prices } }) => {
    const faults = [...measured("offers.csv", row, "pack", pack, measures.get(material))];
    if (pack?.quantity === 0) faults.push(faultIn("offers.csv", row, "pack", "The pack is empty.", "Write what one pack holds."));
    const from = prices?.map(([packs]) => packs);
    if (from && (from[0] !== 1 || from.some((packs, index) => packs <= (from[index - 1] ?? 0))))
      faults.push(faultIn("offers.csv", row, "prices", "Prices must begin at 1 and rise in packs.", "Write them like 1=48.00; 10=43.50."));
    return faults;
  });
};

export const lotRules: Rule = ({ lots, materials }) => {
  const measures = new Map(materials.map(({ values }) => [values.code, values.measure]));
  return lots.flatMap(({ row, values: { material, quantity } }) => measured("lots.csv", row, "quantity", quantity, measures.get(material)));
};
