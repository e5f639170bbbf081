import type { Construction } from "#lib/constructions/construction";
import { applyChanges } from "#lib/editing/applyChanges";
import { changesBetween } from "#lib/editing/changesBetween";
import type { EditRefusal } from "#lib/editing/edit";
import { failed, ok, type Result } from "#lib/result";
import { moveToVersion, withVersion } from "#lib/whatif/moveToVersion";
import { writeAuditIn } from "../audit";
import type { AuthorizedCompany } from "../authorized";
import { type LoadedStaging, loadRemembered } from "../stagings/load";
import { saveConstructions } from "../stagings/saveConstructions";
import { inTurn, type KeptEdit, type NoProduction } from "./keepEdit";
import { saveEditIn } from "./saveEdit";

/** The version cannot be added: a newer one is there. */
interface VersionRefused {
  readonly kind: "problem";
  readonly message: string;
}

export type NotAdded = EditRefusal | NoProduction | VersionRefused;

/**
 * Keeps a further version of a construction, or a construction of its own, for a production, in one transaction with what its pieces are
 * made by: all that were made by the construction follow the new version, or all keep to theirs. The version stays for good, since plans
 * and worked minutes may refer to it; moving the pieces is an edit that can be taken back.
 */
export const addConstruction = (
  company: AuthorizedCompany,
  user: string | null,
  productionCode: string,
  construction: Construction,
  pieces: "all" | "none",
): Promise<Result<KeptEdit, NotAdded>> =>
  inTurn<KeptEdit, NotAdded>(company, async (tx) => {
    const before = await loadRemembered(tx, company, productionCode);
    if (!before) return failed({ kind: "no production" });
    const pinned = withVersion(before.staging, construction);
    if (!pinned.ok) return failed({ kind: "problem", message: pinned.error });
    const { code, version, name } = construction;
    const moved = pieces === "all" ? moveToVersion(pinned.value, code, version, "all") : pinned;
    if (!moved.ok) return failed({ kind: "problem", message: moved.error });
    const grown: LoadedStaging = { ...before, staging: { ...before.staging, constructions: pinned.value.constructions } };
    const applied = applyChanges(grown.staging, changesBetween(grown.staging, moved.value));
    if (!applied.ok) return applied;
    const { staging, changes } = applied.value;
    const { productionId, workroomId } = before;
    await saveConstructions({ tx, companyId: company, workroomId, productionId, whole: true, before: null, known: new Map() }, staging);
    await writeAuditIn(tx, company, {
      user,
      production: productionId,
      action: "construction added",
      detail: `${name.uk} (${code}), version ${version}`,
    });
    const inputRevision = before.inputRevision + 1;
    if (changes.length === 0) {
      await tx.production.update({ where: { id: productionId }, data: { inputRevision } });
      return ok({ ...grown, inputRevision, id: null, changes });
    }
    const title = `${name.uk}, version ${version}: pieces ${pieces === "all" ? "moved to it" : "kept to theirs"}`;
    const id = await saveEditIn(tx, company, grown, staging, { title, changes }, { user, kind: "do", takesBackId: null });
    return ok({ ...before, staging, inputRevision, id, changes });
  });
