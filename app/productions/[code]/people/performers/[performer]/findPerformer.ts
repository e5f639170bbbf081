import { notFound } from "next/navigation";
import type { Performer } from "#lib/casting/casting";
import { isSlugOf } from "../../../../../_data/address";
import type { ProductionView } from "../../../../../_data/stagingPlan";

/** The performer an address stands for; any other is not found. */
export const findPerformer = ({ prepared: { staging } }: ProductionView, part: string): Performer =>
  staging.performers.find(({ code }) => isSlugOf(part, code)) ?? notFound();
