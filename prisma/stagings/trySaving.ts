import type { Fault } from "#lib/exchange/fault";
import { ok, type Result } from "#lib/result";
import type { Staging } from "#lib/staging/staging";
import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import { loadStagingIn } from "./load";
import { saveStagingIn } from "./save";

/** Carries the answer out of a transaction that must not be kept. */
class Undone extends Error {
  constructor(readonly would: Result<Staging, readonly Fault[]>) {
    super("undone");
  }
}

/**
 * What the production would be once the staging were saved, or why it cannot be: saves it, looks, and undoes it all. Only so is a preview
 * true, since beside other productions the company's registers keep what the staging does not name.
 */
export async function trySaving(company: AuthorizedCompany, staging: Staging): Promise<Result<Staging, readonly Fault[]>> {
  try {
    await database().$transaction(
      async (tx) => {
        const saved = await saveStagingIn(tx, company, null, staging);
        if (!saved.ok) throw new Undone(saved);
        const loaded = await loadStagingIn(tx, company, staging.production.code);
        throw new Undone(ok(loaded?.staging ?? staging));
      },
      { timeout: 60_000, maxWait: 10_000 },
    );
  } catch (thrown) {
    if (thrown instanceof Undone) return thrown.would;
    throw thrown;
  }
  return ok(staging);
}
