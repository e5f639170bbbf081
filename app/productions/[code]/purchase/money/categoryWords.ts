import type { Spending } from "#lib/purchasing/spending";

/** What a kind of material is called in a budget. */
export const CATEGORY_WORDS: Readonly<Record<Spending["category"], string>> = {
  net: "Net",
  foundation: "Foundation",
  cloth: "Cloth",
  lining: "Lining",
  stretch: "Stretch cloth",
  bone: "Bones",
  hoop: "Hoop steel",
  hook: "Hooks",
  bar: "Bars",
  elastic: "Elastic",
  ribbon: "Ribbon and tape",
  thread: "Thread",
  trim: "Trimming",
  wire: "Wire",
  fixing: "Fixings",
  bought: "Bought pieces",
  dye: "Dye",
  carriage: "Carriage",
  garments: "Garments bought and hired whole",
};
