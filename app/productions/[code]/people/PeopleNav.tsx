import { SubRail } from "../../../_components/SubRail";
import { productionHref } from "../../../_data/address";

export type PeoplePage = "" | "/performers" | "/makers" | "/away" | "/machines";

const PAGES: readonly (readonly [PeoplePage, string])[] = [
  ["", "Everybody"],
  ["/performers", "Performers"],
  ["/makers", "Makers"],
  ["/away", "Away and closed"],
  ["/machines", "Machines"],
];

/** The pages of the people of a production. */
export const PeopleNav = ({ production, page }: { readonly production: string; readonly page: PeoplePage }) => {
  const base = `${productionHref(production)}/people`;
  return <SubRail label="People" pages={PAGES.map(([path, name]) => ({ href: base + path, name }))} page={base + page} />;
};
