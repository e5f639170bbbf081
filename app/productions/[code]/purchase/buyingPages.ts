import type { Room } from "../../../_components/Rail";
import { productionHref } from "../../../_data/address";
import { type Act, may } from "../../../_gate/may";
import type { Member } from "../../../_gate/member";

const PAGES = [
  ["", "To buy", "money"],
  ["/orders", "Orders", "money"],
  ["/weeks", "Week by week", "shelf"],
  ["/money", "Money", "money"],
  ["/shelf", "Shelf", "shelf"],
  ["/cutting", "Cutting plans", "measurements"],
  ["/corps", "Net of a corps", "measurements"],
  ["/dyes", "Dye book", "shelf"],
] as const satisfies readonly (readonly [string, string, Act])[];

export type BuyingPage = (typeof PAGES)[number][0];

export const buyingHref = (code: string, page: BuyingPage): string => `${productionHref(code)}/purchase${page}`;

/** The pages of cloth and buying that are open to a member. */
export const buyingPages = (member: Member, code: string): readonly Room[] =>
  PAGES.filter(([, , act]) => may(member.role, act)).map(([page, name]) => ({ href: buyingHref(code, page), name }));
