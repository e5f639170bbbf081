import { redirect } from "next/navigation";
import type { z } from "zod";
import { writeAudit } from "#prisma/audit";
import { type Act, may } from "./may";
import { currentMember, type Member } from "./member";
import { fieldsOf, keptOf, type Outcome, refused } from "./outcome";

export type Action<Value = null> = (before: Outcome<Value> | null, form: FormData) => Promise<Outcome<Value>>;

interface MemberAction<Input extends z.ZodType, Value> {
  readonly act: Act;
  readonly input: Input;
  /** What the audit calls it; null where the repository writes it down in the transaction that does it. */
  readonly name: string | null;
  readonly run: (member: Member, input: z.output<Input>) => Promise<Outcome<Value>>;
}

/** The form as an object: one value, or a list where a name comes more than once. */
const read = (form: FormData): Record<string, unknown> =>
  Object.fromEntries(
    [...new Set(form.keys())].map((name) => {
      const all = form.getAll(name);
      return [name, all.length === 1 ? all[0] : all];
    }),
  );

/**
 * The one way a server action is made for people who are signed in: session, company, role, then the input is parsed,
 * then it runs, and what succeeded is written down. Expected failures come back as values with what was typed.
 */
export const memberAction =
  <Input extends z.ZodType, Value>({ act, input, name, run }: MemberAction<Input, Value>): Action<Value> =>
  async (_before, form) => {
    const member = await currentMember();
    if (!member) return refused("You have been signed out. Sign in again; nothing was changed.");
    if (!may(member.role, act)) return refused("This is not yours to do. Ask the supervisor; nothing was changed.");
    const parsed = input.safeParse(read(form));
    if (!parsed.success) return { ...refused("Something is missing or cannot be read.", fieldsOf(parsed.error)), kept: keptOf(form) };
    const outcome = await run(member, parsed.data);
    if (!outcome.ok) return { ...outcome, kept: keptOf(form) };
    if (name !== null) await writeAudit(member.company, { user: member.user.id, action: name, detail: outcome.message });
    if (outcome.to) redirect(outcome.to);
    return outcome;
  };

/** The way an action is made that nobody need be signed in for: only the door uses it. */
export const openAction =
  <Input extends z.ZodType>({
    input,
    run,
  }: {
    readonly input: Input;
    readonly run: (input: z.output<Input>) => Promise<Outcome>;
  }): Action =>
  async (_before, form) => {
    const parsed = input.safeParse(read(form));
    if (!parsed.success) return { ...refused("Something is missing.", fieldsOf(parsed.error)), kept: keptOf(form) };
    const outcome = await run(parsed.data);
    if (!outcome.ok) return { ...outcome, kept: keptOf(form) };
    if (outcome.to) redirect(outcome.to);
    return outcome;
  };
