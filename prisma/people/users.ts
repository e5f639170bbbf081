import { hashPassword } from "better-auth/crypto";
import { failed, ok, type Result } from "#lib/result";
import { writeAuditIn } from "../audit";
import { database, type Transaction } from "../client";
import { newId } from "../ids";
import type { MembershipRole } from "./memberships";

export interface NewUser {
  readonly name: string;
  readonly email: string;
  /** In clear; only its hash is kept. */
  readonly password: string;
  readonly role: MembershipRole;
}

/** Whether anybody can sign in yet: an empty database asks for its first supervisor. */
export const anybodyHere = async (): Promise<boolean> => (await database().user.findFirst({ select: { id: true } })) !== null;

/** Adds a person who may sign in, as a member of a company. The address must be new. */
export async function createUser(tx: Transaction, companyId: string, { name, email, password, role }: NewUser): Promise<string> {
  const userId = newId();
  await tx.user.create({ data: { id: userId, name, email: email.trim().toLowerCase(), emailVerified: true } });
  await tx.account.create({
    data: { id: newId(), userId, accountId: userId, providerId: "credential", password: await hashPassword(password) },
  });
  await tx.membership.create({ data: { companyId, userId, role } });
  return userId;
}

export interface FirstSupervisor {
  readonly companyName: string;
  readonly name: string;
  readonly email: string;
  readonly password: string;
}

/** Makes the company and its first supervisor. Only in a database in which nobody is: two at once, and one is refused. */
export function createFirstSupervisor(first: FirstSupervisor): Promise<Result<{ readonly userId: string }, "somebody is here">> {
  return database().$transaction(async (tx) => {
    await tx.$executeRaw`lock table auth_user in share row exclusive mode`;
    if (await tx.user.findFirst({ select: { id: true } })) return failed("somebody is here");
    const company = await tx.company.create({ data: { code: "company", name: first.companyName } });
    const userId = await createUser(tx, company.id, { ...first, role: "supervisor" });
    await writeAuditIn(tx, company.id, { user: userId, action: "company founded", detail: first.companyName });
    return ok({ userId });
  });
}
