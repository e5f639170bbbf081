import { revalidatePath } from "next/cache";
import { z } from "zod";
import { applyChanges } from "#lib/editing/applyChanges";
import { changesBetween } from "#lib/editing/changesBetween";
import type { Edit, EditRefusal, RowChange } from "#lib/editing/edit";
import { failed, ok, type Result } from "#lib/result";
import type { Staging } from "#lib/staging/staging";
import { keepEdit } from "#prisma/editing/keepEdit";
import { loadStaging } from "#prisma/stagings/load";
import { productionHref } from "../_data/address";
import { todayIn } from "../_data/today";
import { type Action, memberAction } from "./action";
import { clashOf } from "./clash";
import { asSeen, editFields } from "./editInput";
import { type EffectLines, effectLines } from "./effectLines";
import type { Act } from "./may";
import { mayChange } from "./mayChange";
import type { Member } from "./member";
import { faulty, type Outcome, type Refusal, refused } from "./outcome";

/** What a form's function makes of the staging: changes of rows, or the whole as it shall be. */
export type MadeEdit =
  | { readonly title: string; readonly changes: readonly RowChange[] }
  | { readonly title: string; readonly next: Staging };

/** Why it makes none, with what is wrong by the name of the field. */
export interface EditProblem {
  readonly message: string;
  readonly fields?: Readonly<Record<string, string>>;
}

/** How a form that edits ended: kept (and as which edit of the history), or only looked at. */
export interface Edited {
  /** Null when nothing was different, or nothing was kept yet. */
  readonly edit: string | null;
  /** What would follow, when that was asked. */
  readonly effect: EffectLines | null;
  /** What was typed, when it was only looked at. */
  readonly kept: Readonly<Record<string, string>>;
}

interface EditAction<Input extends z.ZodType> {
  readonly act: Act;
  /** The form's own fields; `production`, `step`, `was` and `over` are read besides. */
  readonly input: Input;
  /** Pure: what is changed, out of the staging as it is at the moment of keeping. */
  readonly make: (staging: Staging, input: z.output<Input>, member: Member) => Result<MadeEdit, EditProblem>;
  /** Page to go on to once it is kept; it is given the edit's id as `?kept=`. Without one the page stays. */
  readonly to?: ((input: z.output<Input>, production: string) => string) | undefined;
  /** Names of form fields for faults of cells; those without a field are listed. */
  readonly fieldOf?: (fault: EditFault, input: z.output<Input>) => string | null;
}

export type EditFault = Extract<EditRefusal, { kind: "faults" }>["faults"][number];

/**
 * The one way for a form to make an edit: session, company, role and input are checked, then the function makes the edit of the staging as
 * it is and it is kept, or, on `step=look`, only its effect is told. A form carries `production`; in `was` the rows as the person saw them,
 * so that a row that another has changed since comes back as a clash of theirs and mine (`ClashTable`), never overwritten; and after a clash
 * `over`, the edit the person keeps all the same. Faults come back by field (`fieldOf`) or listed.
 *
 *     export const keepRole = editAction({
 *       act: "cast",
 *       input: z.object({ code: z.string(), name: z.string() }),
 *       make: (staging, { code, name }) => {
 *         const before = rowOf(staging, "roles.csv", code);
 *         return before ? ok({ title: `Role ${name}`, changes: [{ file: "roles.csv", before, after: { ...before, name } }] }) : failed({ message: "It is gone." });
 *       },
 *     });
 *
 * `rowAction` and `registerAction` are made of it for the forms `RowForm` and `RegisterSheet`.
 */
export const editAction = <Input extends z.ZodType>({ act, input, make, to, fieldOf }: EditAction<Input>): Action<Edited> =>
  memberAction({
    act,
    name: null,
    input: z.looseObject({}).transform((form, context) => {
      const shared = editFields.safeParse(form);
      const own = input.safeParse(form);
      for (const issue of [...(shared.error?.issues ?? []), ...(own.error?.issues ?? [])])
        context.addIssue({ code: "custom", message: issue.message, path: [...issue.path] });
      return shared.success && own.success ? { shared: shared.data, own: own.data, form } : z.NEVER;
    }),
    run: async (member, { shared, own, form }): Promise<Outcome<Edited>> => {
      const { production, step, was, over } = shared;
      let tried: Edit | null = null;
      const edit = (staging: Staging): Result<Edit, Refused> => {
        const made = over ? ok(over) : make(staging, own, member);
        if (!made.ok) return failed({ kind: "problem", ...made.error });
        const changes = "next" in made.value ? changesBetween(staging, made.value.next) : made.value.changes;
        if (!changes.every(({ file }) => mayChange(member.role, file))) return failed({ kind: "problem", message: NOT_YOURS });
        tried = over ?? asSeen({ title: made.value.title, changes }, was);
        return ok(tried);
      };
      const refusalOf = (error: EditRefusal | Refused | { readonly kind: "no production" }): Refusal => {
        if (error.kind === "problem") return refused(error.message, error.fields);
        if (error.kind === "no production") return refused("There is no such production any more.");
        if (error.kind === "conflict") return { ...refused(CLASH), clash: clashOf(tried!, error.conflicts) };
        const placed = error.faults.map((fault) => ({ fault, field: fieldOf?.(fault, own) ?? null }));
        const fields: Record<string, string> = {};
        for (const { fault, field } of placed) if (field !== null) fields[field] ??= `${fault.problem} ${fault.mend}`;
        const others = placed.flatMap(({ fault, field }) => (field === null ? [fault] : []));
        return { ...faulty("It cannot be kept so. Nothing was written.", others), fields };
      };
      if (step === "theirs") {
        revalidatePath(productionHref(production), "layout");
        return { ok: true, message: "Theirs stays.", to: null, value: { edit: null, effect: null, kept: {} } };
      }
      if (step === "look") {
        const loaded = await loadStaging(member.company, production);
        if (!loaded) return refusalOf({ kind: "no production" });
        const made = edit(loaded.staging);
        const applied = made.ok ? applyChanges(loaded.staging, made.value.changes) : made;
        if (!applied.ok) return refusalOf(applied.error);
        const effect = effectLines(loaded.staging, applied.value.staging, todayIn(loaded.staging.production.zone));
        return { ok: true, message: "Nothing is kept yet.", to: null, value: { edit: null, effect, kept: textsOf(form) } };
      }
      const kept = await keepEdit(member.company, member.user.id, production, edit);
      if (!kept.ok) return refusalOf(kept.error);
      const { id } = kept.value;
      revalidatePath(productionHref(production), "layout");
      const on = to?.(own, production) ?? null;
      const message = id === null ? "Nothing was different." : "Kept.";
      return {
        ok: true,
        message,
        to: on && id ? `${on}${on.includes("?") ? "&" : "?"}kept=${id}` : on,
        value: { edit: id, effect: null, kept: {} },
      };
    },
  });

const NOT_YOURS = "Part of this is not yours to change. Ask the supervisor; nothing was changed.";
const CLASH = "Somebody has changed this since you looked at it. Nothing was written; what you typed is still here.";

type Refused = { readonly kind: "problem" } & EditProblem;

const textsOf = (form: Readonly<Record<string, unknown>>): Record<string, string> =>
  Object.fromEntries(Object.entries(form).filter((entry): entry is [string, string] => typeof entry[1] === "string"));
