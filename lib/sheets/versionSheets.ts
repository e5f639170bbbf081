import type { ThreePoint } from "#lib/breakdown/work";
import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import type { VersionEffect } from "#lib/whatif/versionEffect";
import { listCell } from "./cells";
import { materialCells } from "./changeCells";
import type { Sheet } from "./sheet";

/** What another version of a construction would change, as tables: by garment and by material. */
export const versionSheets = ({ garments, materials }: VersionEffect, staging: Staging): readonly Sheet[] => {
  const changed = (all: VersionEffect["materials"]) => all.filter((one) => one.before !== one.after);
  const inWords = (all: VersionEffect["materials"]) =>
    listCell(changed(all).map((one) => `${one.material} ${materialCells(one, staging)[4]}`));
  return [
    {
      name: "garments",
      title: "Garments that would change",
      headings: ["garment", "name", "likely_before", "likely_after", "low_change", "likely_change", "high_change", "materials", "notes"],
      rows: garments.map((one) => [
        one.garment,
        one.name,
        ...hourCells(one.before, one.after),
        inWords(one.materials),
        listCell(one.notes),
      ]),
    },
    {
      name: "materials",
      title: "Materials that would change",
      headings: ["material", "name", "before", "after", "change"],
      rows: changed(materials).map((one) => materialCells(one, staging)),
    },
  ];
};

/** Likely before and after, then by how much low, likely and high change. */
export const hourCells = (before: ThreePoint, after: ThreePoint): readonly string[] => [
  showHours(before[1]),
  showHours(after[1]),
  ...([0, 1, 2] as const).map((point) => `${after[point] > before[point] ? "+" : ""}${showHours(after[point] - before[point])}`),
];
