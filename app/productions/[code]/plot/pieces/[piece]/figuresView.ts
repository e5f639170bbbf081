import type { Piece } from "#lib/casting/wardrobe";
import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { showMoney } from "#lib/units/money";
import { pieceFigures } from "#lib/whatif/pieceFigures";
import { nameOfMaterial } from "../../../../../_data/names";
import { showQuantity } from "../../../../../_data/quantity";

/** Figures of one garment of a piece in words, as they may cross to the browser. */
export interface FiguresView {
  readonly garments: number;
  readonly low: string;
  readonly likely: string;
  readonly high: string;
  readonly fittings: string;
  readonly needs: readonly { readonly name: string; readonly quantity: string; readonly isNet: boolean }[];
  /** Null for who may not see money. */
  readonly cost: {
    readonly labour: string;
    readonly materials: string;
    readonly sum: string;
    readonly leftOut: readonly string[];
  } | null;
  readonly problems: readonly string[];
}

/** Null where nobody wears the piece. */
export const figuresView = (staging: Staging, piece: Piece, money: boolean): FiguresView | null => {
  const figures = pieceFigures(staging, piece);
  if (!figures) return null;
  const { currency, lengths } = staging.production;
  const [low, likely, high] = figures.minutes;
  const show = (amount: number) => showMoney(amount, currency);
  const leftOut = [
    ...figures.nobody.map((skill) => `nobody has the skill ${skill}`),
    ...figures.unsold.map((material) => `nobody sells ${nameOfMaterial(staging, material)}`),
  ];
  return {
    garments: figures.garments,
    low: showHours(low),
    likely: showHours(likely),
    high: showHours(high),
    fittings: showHours(figures.fittingMinutes),
    needs: figures.needs.map(({ material, measure, quantity }) => ({
      name: nameOfMaterial(staging, material),
      quantity: showQuantity(quantity, measure, lengths),
      isNet: staging.materials.find(({ code }) => code === material)?.kind === "net",
    })),
    cost: money
      ? { labour: show(figures.labour), materials: show(figures.materials), sum: show(figures.labour + figures.materials), leftOut }
      : null,
    problems: figures.problems,
  };
};
