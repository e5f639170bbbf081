import type { PlainDate } from "#lib/calendar/plainDate";
import type { FittedAt } from "#lib/fittings/answer";
import type { AuthorizedCompany } from "#prisma/authorized";
import { loadProduction } from "../../../../../_data/stagingPlan";

/** The workroom's day, when the production's plan has the fitting; null when it has not. */
export const requireFitting = async (company: AuthorizedCompany, production: string, at: FittedAt): Promise<PlainDate | null> => {
  const view = await loadProduction(company, production);
  const found = view?.plan?.fittings.some(
    ({ garment, fitting, performer }) => garment === at.garment && fitting === at.fitting && performer === at.performer,
  );
  return view && found ? view.today : null;
};
