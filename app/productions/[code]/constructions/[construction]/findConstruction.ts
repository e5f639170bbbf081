import { notFound } from "next/navigation";
import type { Construction } from "#lib/constructions/construction";
import { versionsOf } from "#lib/constructions/versions";
import { isSlugOf } from "../../../../_data/address";
import type { ProductionView } from "../../../../_data/stagingPlan";

/** The construction an address stands for: the version asked for, or the newest, and all its versions, oldest first. */
export const findConstruction = (
  { prepared: { staging } }: ProductionView,
  part: string,
  version?: string,
): { readonly shown: Construction; readonly versions: readonly Construction[] } => {
  const code = staging.constructions.find((one) => isSlugOf(part, one.code))?.code;
  const versions = code === undefined ? [] : versionsOf(staging.constructions, code);
  const shown = version === undefined ? versions.at(-1) : versions.find((one) => String(one.version) === version);
  if (!shown) notFound();
  return { shown, versions };
};
