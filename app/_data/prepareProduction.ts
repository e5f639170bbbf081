import type { PlainDate } from "#lib/calendar/plainDate";
import { prepare } from "#lib/planning/prepare";
import type { Prepared } from "#lib/planning/prepared";
import { withTaken } from "#lib/planning/taken";
import type { AuthorizedCompany } from "#prisma/authorized";
import { loadTaken } from "#prisma/plans/taken";
import type { LoadedStaging } from "#prisma/stagings/load";

/** A production made ready for the engine beside the others of its workroom. */
export interface PreparedBeside {
  /** What the others' plans have taken is gone from everybody's time. */
  readonly prepared: Prepared;
  /** Takes the same away from the production as it would be with something changed. */
  readonly beside: (prepared: Prepared) => Prepared;
  /** Titles of the productions that share the workroom and have a plan. */
  readonly sharedWith: readonly string[];
}

export const prepareProduction = async (company: AuthorizedCompany, loaded: LoadedStaging, today: PlainDate): Promise<PreparedBeside> => {
  const { taken, by } = await loadTaken(company, loaded);
  const beside = (prepared: Prepared) => withTaken(prepared, taken);
  return { prepared: beside(prepare(loaded.staging, { today })), beside, sharedWith: by };
};
