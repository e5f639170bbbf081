import type { PlainDate } from "#lib/calendar/plainDate";

/** A page of the dye book: how a colour was come to, so that it can be come to again. */
export interface DyeEntry {
  readonly code: string;
  /** Material that was dyed, its lot where it came from one, and the numbers of garments that were dyed when made. */
  readonly material: string;
  readonly lot: string | null;
  readonly garments: readonly string[];
  readonly colour: string;
  /** Dyes and salts by weight of dry cloth, water, heat, minutes. */
  readonly recipe: string;
  readonly dyedOn: PlainDate;
  readonly by: string | null;
  /** A photograph of the swatch is kept with it. */
  readonly hasSwatch: boolean;
  /** In the dyer's words, beside the general ones. */
  readonly cautions: string;
}

/** Shown with every page of the dye book and every batch; local codes and the makers' data sheets go before them. */
export const DYE_CAUTIONS: readonly string[] = [
  "Powder dyes harm the lungs and can make one allergic: take liquid ones, or mix powder in a box with a mask on.",
  "Gloves and apron; vessels, spoons and sieves that never meet food; a wet room apart from sewing.",
  "A full vat is heavy and scalds: two people lift it, and the lid is opened away from the face.",
  "Keep the safety data sheets at hand; follow them, and the local code on what may go down the drain.",
  "Judge the colour dry, beside the skin, in stage light.",
];
