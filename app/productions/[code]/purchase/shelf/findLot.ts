import type { AuthorizedCompany } from "#prisma/authorized";
import { codesOfLots, loadLot } from "#prisma/stock/shelf";
import { isSlugOf } from "../../../../_data/address";

/** The lot an address stands for, as the router hands it over; null when the company has none such. */
export const findLot = async (company: AuthorizedCompany, part: string): ReturnType<typeof loadLot> => {
  const code = (await codesOfLots(company)).find((each) => isSlugOf(part, each));
  return code === undefined ? null : loadLot(company, code);
};
