import { showQuantity } from "#lib/materials/showQuantity";
import type { Production } from "#lib/staging/staging";
import { showMoney } from "#lib/units/money";
import type { GoodsEffect, LineChange } from "#lib/whatif/goodsEffect";
import { listed, plural } from "../_data/plural";

const MOST_LINES = 8;

/** What an edit does to cloth and buying, in sentences: lines of the purchase list that change, and what everything comes to. */
export const goodsLines = ({ lines, cost, materials }: GoodsEffect, { lengths, currency, words }: Production): readonly string[] => {
  const asked = ({ before, after, measure, name }: LineChange) => {
    const show = (one: NonNullable<LineChange["before"]>) => `${one.packs} × ${showQuantity(one.pack, measure, lengths)}`;
    if (after === null) return `${name}, nothing instead of ${show(before!)}`;
    return before === null ? `${name}, ${show(after)}` : `${name}, ${show(after)} instead of ${show(before)}`;
  };
  const money = (amount: number) => showMoney(amount, currency, words);
  const told = lines.slice(0, MOST_LINES).map(asked);
  const bought = lines.length > MOST_LINES ? [...told, `and ${lines.length - MOST_LINES} more`] : told;
  return [
    ...(lines.length > 0 ? [`To buy: ${bought.join("; ")}.`] : []),
    ...(lines.length === 0 && materials.length > 0
      ? [
          `${plural(materials.length, "material")} needed otherwise, within the packs and lots there are: ${listed(materials.map(({ material }) => material))}.`,
        ]
      : []),
    ...(cost.before === cost.after
      ? []
      : [
          `Goods and bought garments: ${money(cost.before)} before, ${money(cost.after)} after (${cost.after > cost.before ? "+" : "−"}${money(Math.abs(cost.after - cost.before))}).`,
        ]),
  ];
};
