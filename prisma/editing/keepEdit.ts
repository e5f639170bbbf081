import { applyChanges } from "#lib/editing/applyChanges";
import type { Edit, EditRefusal, RowChange } from "#lib/editing/edit";
import { failed, ok, type Result } from "#lib/result";
import type { Staging } from "#lib/staging/staging";
import type { AuthorizedCompany } from "../authorized";
import { database, type Transaction } from "../client";
import { type LoadedStaging, loadRemembered, rememberStaging } from "../stagings/load";
import { saveEditIn } from "./saveEdit";

/** The company has no production of that code. */
export interface NoProduction {
  readonly kind: "no production";
}

/** An edit that was kept, and the production from then on. */
export interface KeptEdit extends LoadedStaging {
  /** Null when the changes changed nothing: then nothing was written. */
  readonly id: string | null;
  /** What was changed, as the files write it. */
  readonly changes: readonly RowChange[];
}

/** An edit, or a pure function that makes one of the staging as it is; it may refuse in its own way. */
export type MakeEdit<Refused> = Edit | ((staging: Staging) => Result<Edit, Refused>);

/**
 * The one way in which anything that a staging holds is changed, except by bringing in files. In one transaction: no other save or edit of the
 * company runs; the production is loaded as it is now; the changes are made to it and the whole is checked by the rules of an import; only the
 * files touched are written; the revision is raised (those of other productions too where a register is shared); the edit is kept so that it
 * can be taken back, and written down. A row that is no longer as `before` says is a conflict that shows theirs and mine; then, and with any
 * fault, nothing is written.
 *
 *     const edit = { title: "Orla Venn: pace", changes: [{ file: "makers.csv", before: seen, after: { ...seen, productive: "80%" } }] };
 *     const kept = await keepEdit(member.company, member.user.id, "midwinter", edit);
 *
 * What is easier said of the whole staging is a pure function of it: `(staging) => ok({ title, changes: changesBetween(staging, next(staging)) })`.
 * In a form, use `editAction` of `app/_gate`. `takeBack` undoes and redoes.
 *
 * @param user who does it, a member of the company; null for the command line.
 */
export const keepEdit = <Refused = never>(
  company: AuthorizedCompany,
  user: string | null,
  productionCode: string,
  edit: MakeEdit<Refused>,
): Promise<Result<KeptEdit, EditRefusal | NoProduction | Refused>> =>
  inTurn(company, (tx) => keepEditIn(tx, company, productionCode, edit, { user, kind: "do", takesBackId: null }));

/** How the history has an edit. */
export interface Entry {
  readonly user: string | null;
  readonly kind: "do" | "undo" | "redo";
  readonly takesBackId: string | null;
}

/** Keeps an edit once the other saves and edits of the company are through. */
export async function inTurn<Kept extends KeptEdit, Refused>(
  company: AuthorizedCompany,
  keep: (tx: Transaction) => Promise<Result<Kept, Refused>>,
): Promise<Result<Kept, Refused>> {
  const kept = await database().$transaction(
    async (tx) => {
      await tx.$queryRaw`select id from company where id = ${company}::uuid for update`;
      return keep(tx);
    },
    { timeout: 30_000, maxWait: 10_000 },
  );
  // Not before it is written for good.
  if (kept.ok) {
    const { staging, productionId, workroomId, inputRevision } = kept.value;
    rememberStaging({ staging, productionId, workroomId, inputRevision });
  }
  return kept;
}

/** The same inside a transaction that has waited its turn. */
export async function keepEditIn<Refused>(
  tx: Transaction,
  company: AuthorizedCompany,
  productionCode: string,
  edit: MakeEdit<Refused>,
  entry: Entry,
): Promise<Result<KeptEdit, EditRefusal | NoProduction | Refused>> {
  const loaded = await loadRemembered(tx, company, productionCode);
  if (!loaded) return failed({ kind: "no production" });
  const made = typeof edit === "function" ? edit(loaded.staging) : ok(edit);
  if (!made.ok) return made;
  const applied = applyChanges(loaded.staging, made.value.changes);
  if (!applied.ok) return applied;
  const { staging, changes } = applied.value;
  if (changes.length === 0) return ok({ ...loaded, id: null, changes });
  const id = await saveEditIn(tx, company, loaded, staging, { title: made.value.title, changes }, entry);
  return ok({ ...loaded, staging, inputRevision: loaded.inputRevision + 1, id, changes });
}
