import type { Quantity } from "#lib/materials/material";
import { showQuantity } from "#lib/materials/showQuantity";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Length, MinorUnits } from "#lib/units/quantities";
import { showLength } from "#lib/units/showLength";
import { words } from "#lib/words/words";
import type { Answer, Asked } from "./answer";
import { counted, listed, moneyOf, sum } from "./told";

/** One net of the purchase list. */
export interface NetToBuy {
  readonly material: string;
  readonly name: string;
  readonly colour: string;
  readonly width: Length | null;
  /** Sets that must each be cut from one dye lot, by comma; null when it does not matter. */
  readonly oneLotSet: string | null;
  readonly needed: Quantity;
  readonly spare: Quantity;
  /** Shrinkage and spare added, the shelf taken off: the least one lot must hold. */
  readonly toBuy: Quantity;
  readonly fromShelf: Quantity;
  readonly packs: number;
  readonly pack: Quantity;
  readonly cost: MinorUnits;
  readonly supplier: string;
  readonly garments: readonly string[];
  readonly arithmetic: string;
}

/** How much of every net is bought in one lot, by its code. */
export const netToBuy = ({ staging, purchase }: StagingPlan): readonly NetToBuy[] =>
  [...purchase.lines].sort(byMaterial).flatMap((line): NetToBuy[] => {
    const material = staging.materials.find(({ code }) => code === line.material);
    if (material?.kind !== "net") return [];
    return [
      {
        material: line.material,
        name: line.name,
        colour: line.colour,
        width: material.width,
        oneLotSet: line.oneLotSet,
        needed: line.gross,
        spare: line.spare,
        toBuy: line.toBuy,
        fromShelf: sum(line.fromShelf.map(({ quantity }) => quantity)),
        packs: line.packs,
        pack: line.pack,
        cost: line.cost,
        supplier: line.supplier,
        garments: [...new Set(line.reasons.map(({ garment }) => garment))],
        arithmetic: line.arithmetic,
      },
    ];
  });

const byMaterial = (a: { readonly material: string }, b: { readonly material: string }) => (a.material < b.material ? -1 : 1);

export const answerNetToBuy = ({ plan }: Asked): Answer => {
  const data = netToBuy(plan);
  const { staging, purchase } = plan;
  const isNet = (code: string) => staging.materials.some((material) => material.code === code && material.kind === "net");
  const covered = purchase.covered.filter(({ material }) => isNet(material));
  const unoffered = purchase.unoffered.filter(({ material }) => isNet(material));
  const money = moneyOf(plan);
  const show = (quantity: Quantity) => showQuantity(quantity, "length", staging.production.lengths);
  const width = (length: Length | null) => (length === null ? "" : showLength(length, staging.production.lengths));
  return {
    says: [
      ...(data.length === 0 ? ["No net is to be bought."] : []),
      ...data.map(
        (one) =>
          `${one.name}, ${one.colour}${one.width === null ? "" : `, ${width(one.width)} wide`}: ${show(one.toBuy)}, of which ${show(one.spare)} spare; ` +
          `${counted(one.packs, "pack")} of ${show(one.pack)}, ${money(one.cost)}, from ${one.supplier}` +
          `${one.oneLotSet === null ? "" : `, in one dye lot for ${one.oneLotSet}`}.`,
      ),
      ...covered.map(({ name, gross }) => `${name}: ${show(gross)} are on the shelf or on order; nothing is bought.`),
      ...unoffered.map(({ why, toBuy }) => `${why} ${show(toBuy)} are needed.`),
    ],
    tables: [
      {
        title: "Net",
        headings: [
          "net",
          words(staging.production.words).trade.colour,
          "width",
          "needed",
          "spare",
          "from the shelf",
          "to buy",
          "packs",
          "garments",
          "arithmetic",
        ],
        rows: data.map((one) => [
          one.name,
          one.colour,
          width(one.width),
          show(one.needed),
          show(one.spare),
          show(one.fromShelf),
          show(one.toBuy),
          `${one.packs} of ${show(one.pack)}`,
          listed(one.garments, 3),
          one.arithmetic,
        ]),
      },
    ],
    reasons: [
      "Needed: off the roll, as the cutting plan lays it out for these garments. The spare is the material's own share (materials.csv).",
      "Whole packs are bought; what is over is not counted as spare. Sets that must match are to be cut from one dye lot: ask for it in the order.",
    ],
    data,
  };
};
