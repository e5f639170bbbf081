import { buyingHref } from "../buyingPages";

export const orderHref = (code: string, number: number | string): string => `${buyingHref(code, "/orders")}/${number}`;
