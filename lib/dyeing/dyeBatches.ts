import { group } from "d3-array";
import { stocksBound } from "#lib/cutting/bound";
import { cutAtOnce } from "#lib/cutting/cutAtOnce";
import type { Quantity } from "#lib/materials/material";
import type { DyeItem } from "./dyeWork";

/** What one vat takes at once, so that it can move in the bath: so much cloth, or so many garments. */
export interface VatCapacity {
  readonly cloth: Quantity;
  readonly garments: number;
}

/** What goes into the vat together. */
export interface DyeBatch {
  readonly colour: string;
  readonly what: DyeItem["what"];
  readonly items: readonly DyeItem[];
  /** Filled of the capacity, per mille. */
  readonly full: number;
}

export interface DyePlan {
  readonly batches: readonly DyeBatch[];
  /** No plan needs fewer. */
  readonly fewest: number;
  /** Sets that go into several vats, and single pieces too great for one. */
  readonly warnings: readonly string[];
}

/**
 * Fewest vats, one colour in each; what must match goes into one vat where it fits, since no two baths are quite alike. A set too great for
 * one vat is shared out evenly over as many as it takes, and a warning says which garments may differ.
 */
export const dyeBatches = (items: readonly DyeItem[], capacity: VatCapacity): DyePlan => {
  const batches: DyeBatch[] = [];
  const warnings: string[] = [];
  let fewest = 0;
  for (const alike of group(items, (item) => JSON.stringify([item.colour, item.what])).values()) {
    const { colour, what } = alike[0]!;
    const most = what === "cloth" ? capacity.cloth : capacity.garments;
    const add = (own: readonly DyeItem[]) => batches.push({ colour, what, items: own, full: Math.round((1000 * loadOf(own)) / most) });
    const [fits, tooGreat] = parted(alike, ({ load }) => load <= most);
    for (const item of tooGreat) {
      add([item]);
      warnings.push(`${item.garment} is more than one vat takes: dye its cloth in parts before it is cut, or find a greater vat.`);
    }
    const lumps = [...group(fits, ({ set, garment }) => set ?? `one ${garment}`).values()].flatMap((own) => {
      if (loadOf(own) <= most) return [own];
      const shared = cutAtOnce(
        own.map(({ load }) => load),
        most,
      ).map((bin) => bin.map((at) => own[at]!));
      const others = shared.slice(1).flatMap((lump) => lump.map(({ garment }) => garment));
      if (own[0]!.set !== null)
        warnings.push(
          `${own[0]!.set} takes ${shared.length} vats of ${colour}: weigh each bath alike and lay the swatches together; ${[...new Set(others)].join(", ")} may differ.`,
        );
      return shared;
    });
    for (const bin of cutAtOnce(lumps.map(loadOf), most)) add(bin.flatMap((at) => lumps[at]!));
    fewest +=
      tooGreat.length +
      stocksBound(
        fits.map(({ load }) => load),
        most,
      );
  }
  return { batches, fewest, warnings };
};

const loadOf = (items: readonly DyeItem[]): Quantity => items.reduce((sum, { load }) => sum + load, 0);

const parted = <T>(items: readonly T[], isIn: (item: T) => boolean): readonly [readonly T[], readonly T[]] => [
  items.filter(isIn),
  items.filter((item) => !isIn(item)),
];
