import { notFound } from "next/navigation";
import type { Maker } from "#lib/labour/workroom";
import { isSlugOf } from "../../../../../_data/address";
import type { ProductionView } from "../../../../../_data/stagingPlan";

/** The maker an address stands for; any other is not found. */
export const findMaker = (view: ProductionView, part: string): Maker =>
  view.prepared.staging.makers.find(({ code }) => isSlugOf(part, code)) ?? notFound();
