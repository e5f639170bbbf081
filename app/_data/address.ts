/** Part of an address for a production's code or a garment's number: `HM 014` becomes `HM-014`. */
export const slug = (text: string): string => encodeURIComponent(text.trim().replaceAll(/\s+/g, "-"));

export const productionHref = (code: string): string => `/productions/${slug(code)}`;

export const garmentHref = (code: string, number: string): string => `${productionHref(code)}/garments/${slug(number)}`;

/** Whether an address's part, as the router hands it over, stands for this code or number. */
export const isSlugOf = (part: string, text: string): boolean => {
  try {
    return slug(decodeURIComponent(part)) === slug(text);
  } catch {
    return false;
  }
};

export const constructionHref = (code: string, construction: string): string =>
  `${productionHref(code)}/constructions/${slug(construction)}`;

export const makerHref = (code: string, maker: string): string => `${productionHref(code)}/people/makers/${slug(maker)}`;
