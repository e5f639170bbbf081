import { slug } from "../../../../_data/address";
import { buyingHref } from "../buyingPages";

export const lotHref = (code: string, lot: string): string => `${buyingHref(code, "/shelf")}/${slug(lot)}`;
