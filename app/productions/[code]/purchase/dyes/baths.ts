import { type DyePlan, dyeBatches, type VatCapacity } from "#lib/dyeing/dyeBatches";
import type { DyeItem } from "#lib/dyeing/dyeWork";
import { LENGTH_PER_YARD } from "#lib/units/quantities";

/** A floor vat as a workroom has it: 12 yards of net or cloth, or 8 pairs of tights, can move in it (common practice, no source). */
const VAT: VatCapacity = { cloth: 12 * LENGTH_PER_YARD, garments: 8 };

/** What goes into the workroom's vat together. */
export const baths = (items: readonly DyeItem[]): DyePlan => dyeBatches(items, VAT);
