import type { Garment, Wearer } from "#lib/casting/wardrobe";
import type { Staging } from "#lib/staging/staging";
import { nameOfPerformer } from "./names";

/** Who a wearer is: the performer, or before casting the size group the place stands on. */
export const wearerName = (wearer: Wearer, staging: Staging): string => {
  if (wearer.performer !== null) return nameOfPerformer(staging, wearer.performer);
  const group = staging.sizeGroups.find((each) => each.code === wearer.sizeGroup)?.name ?? wearer.sizeGroup;
  return `not cast (${group})`;
};

export const wearerNames = (garment: Garment, staging: Staging): string =>
  garment.wearers.map((wearer) => wearerName(wearer, staging) + (wearer.standing === "cover" ? " (stands by)" : "")).join(", ");
