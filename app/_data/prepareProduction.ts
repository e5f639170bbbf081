import type { PlainDate } from "#lib/calendar/plainDate";
import { prepare } from "#lib/planning/prepare";
import type { Prepared } from "#lib/planning/prepared";
import { withTaken } from "#lib/planning/taken";
import { lotsFor } from "#lib/stock/lotsFor";
import type { AuthorizedCompany } from "#prisma/authorized";
import { loadTaken } from "#prisma/plans/taken";
import type { LoadedStaging } from "#prisma/stagings/load";
import { loadReservations } from "#prisma/stock/shelf";

/** A production made ready for the engine beside the others of its workroom. */
export interface PreparedBeside {
  /** What the others' plans have taken is gone from everybody's time. */
  readonly prepared: Prepared;
  /** Takes the same away from the production as it would be with something changed. */
  readonly beside: (prepared: Prepared) => Prepared;
  /** Titles of the productions that share the workroom and have a plan. */
  readonly sharedWith: readonly string[];
}

/** A production is planned with the cloth it may count on: what is held of it for others is not there. */
export const prepareProduction = async (company: AuthorizedCompany, loaded: LoadedStaging, today: PlainDate): Promise<PreparedBeside> => {
  const [{ taken, by }, held] = await Promise.all([loadTaken(company, loaded), loadReservations(company)]);
  const beside = (prepared: Prepared) => withTaken(prepared, taken);
  const staging = { ...loaded.staging, lots: lotsFor(loaded.staging.lots, held, loaded.staging.production.code) };
  return { prepared: beside(prepare(staging, { today })), beside, sharedWith: by };
};
