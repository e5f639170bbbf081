/** Shown with every page of the dye book and every batch; local codes and the makers' data sheets go before them. */
export const DYE_CAUTIONS: readonly string[] = [
  "Powder dyes harm the lungs and can make one allergic: take liquid ones, or mix powder in a box with a mask on.",
  "Gloves and apron; vessels, spoons and sieves that never meet food; a wet room apart from sewing.",
  "A full vat is heavy and scalds: two people lift it, and the lid is opened away from the face.",
  "Keep the safety data sheets at hand; follow them, and the local code on what may go down the drain.",
  "Judge the colour dry, beside the skin, in stage light.",
];
