import type { FoundKind } from "#lib/staging/find";
import { constructionHref, garmentHref, makerHref, productionHref, slug } from "../../../_data/address";

/** The page of what was found. */
export const foundHref = (production: string, kind: FoundKind, code: string): string => {
  const base = productionHref(production);
  switch (kind) {
    case "performer":
      return `${base}/people/performers/${slug(code)}`;
    case "garment":
      return garmentHref(production, code);
    case "maker":
      return makerHref(production, code);
    case "construction":
      return constructionHref(production, code);
    case "role":
      return `${base}/casting`;
    case "costume":
      return `${base}/plot`;
    case "material":
      return `${base}/purchase/shelf`;
  }
};
