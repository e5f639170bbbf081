import type { EditRefusal, RowChange } from "#lib/editing/edit";
import { inverse } from "#lib/editing/inverse";
import { failed, ok, type Result } from "#lib/result";
import type { AuthorizedCompany } from "../authorized";
import type { Transaction } from "../client";
import { inTurn, type KeptEdit, keepEditIn, type NoProduction } from "./keepEdit";

/** What shall be taken back: the last thing the person did, the last thing they took back, or an edit of the history by its id. */
export type ToTakeBack = "last" | "last taken back" | { readonly id: string };

export interface TakingBack {
  readonly what: ToTakeBack;
  /** Whether the person may change rows of a file. */
  readonly may: (file: string) => boolean;
  /** What the person chose after a conflict was shown, instead of what taking back would do. */
  readonly changes?: readonly RowChange[];
}

export interface TakenBack extends KeptEdit {
  readonly title: string;
  readonly kind: "undo" | "redo";
}

export type TakeBackRefusal =
  | Exclude<EditRefusal, { readonly kind: "conflict" }>
  /** With all that taking it back would do. */
  | (Extract<EditRefusal, { readonly kind: "conflict" }> & { readonly changes: readonly RowChange[] })
  | NoProduction
  /** There is nothing of the kind, or it has been taken back already. */
  | { readonly kind: "nothing" }
  | { readonly kind: "not yours" };

/**
 * Takes an edit back, or does again what was taken back, as an edit of its own: nothing in the history is lost. Where somebody has changed a
 * row since, that is a conflict and nothing is written.
 */
export const takeBack = (
  company: AuthorizedCompany,
  user: string,
  productionCode: string,
  { what, may, changes }: TakingBack,
): Promise<Result<TakenBack, TakeBackRefusal>> =>
  inTurn(company, async (tx): Promise<Result<TakenBack, TakeBackRefusal>> => {
    const edit = await find(tx, company, user, productionCode, what);
    if (!edit) return failed({ kind: "nothing" });
    const back = changes ?? inverse(edit.changes as unknown as readonly RowChange[]);
    if (!back.every(({ file }) => may(file))) return failed({ kind: "not yours" });
    const kind = edit.kind === "undo" ? "redo" : "undo";
    const made = { title: edit.title, changes: back };
    const kept = await keepEditIn<never>(tx, company, productionCode, made, { user, kind, takesBackId: edit.id });
    if (kept.ok) return ok({ ...kept.value, title: edit.title, kind });
    return failed(kept.error.kind === "conflict" ? { ...kept.error, changes: back } : kept.error);
  });

async function find(tx: Transaction, companyId: string, user: string, code: string, what: ToTakeBack) {
  const open = { companyId, production: { code }, takenBack: null };
  const orderBy = [{ at: "desc" as const }, { id: "desc" as const }];
  if (typeof what === "object") return tx.edit.findFirst({ where: { ...open, id: what.id } });
  if (what === "last") return tx.edit.findFirst({ where: { ...open, byId: user, kind: { not: "undo" } }, orderBy });
  // Once something new is done, what was taken back before is no longer done again by a key; the history still can.
  const last = await tx.edit.findFirst({ where: { companyId, production: { code }, byId: user, kind: "do" }, orderBy });
  const since = last ? { at: { gte: last.at } } : {};
  return tx.edit.findFirst({ where: { ...open, byId: user, kind: "undo", ...since }, orderBy });
}
