import { hashPassword } from "better-auth/crypto";
import { failed, ok, type Result } from "#lib/result";
import { writeAuditIn } from "../audit";
import type { AuthorizedCompany } from "../authorized";
import { database, type Transaction } from "../client";
import type { MembershipRole } from "./memberships";
import { createUser, type NewUser } from "./users";

export interface ListedMember {
  readonly user: string;
  readonly name: string;
  readonly email: string;
  readonly role: MembershipRole;
  readonly since: Date;
  /** Null while they may come in. */
  readonly ended: Date | null;
  /** Counts changes: a change names the version it was read at. */
  readonly version: number;
}

/** Everybody who may come in, or could, by name; those whose access has ended come last. */
export async function listMembers(company: AuthorizedCompany): Promise<readonly ListedMember[]> {
  const rows = await database().membership.findMany({
    where: { companyId: company },
    include: { user: { select: { name: true, email: true } } },
    orderBy: [{ user: { name: "asc" } }, { id: "asc" }],
  });
  const members = rows.map((row) => ({
    user: row.userId,
    name: row.user.name,
    email: row.user.email,
    role: row.role as MembershipRole,
    since: row.createdAt,
    ended: row.endedAt,
    version: row.version,
  }));
  return [...members.filter(({ ended }) => ended === null), ...members.filter(({ ended }) => ended !== null)];
}

export type MemberRefusal =
  /** Somebody has the address already. */
  | "address taken"
  /** They are not of this company, or another has changed this since it was read. */
  | "changed"
  /** Nobody could let anybody in again. */
  | "last supervisor"
  /** The account is another company's too: its password is not this one's to change. */
  | "elsewhere too";

/** Adds a person with a first password, which the supervisor tells them. The address must be new. */
export const addMember = (company: AuthorizedCompany, by: string, person: NewUser): Promise<Result<string, MemberRefusal>> =>
  database().$transaction(async (tx) => {
    // Two at once with one address: the second waits here, and then finds it taken.
    await tx.$executeRaw`lock table auth_user in share row exclusive mode`;
    if (await tx.user.findUnique({ where: { email: person.email.trim().toLowerCase() }, select: { id: true } }))
      return failed("address taken");
    const user = await createUser(tx, company, person);
    await note(tx, company, by, user, "access given", `${person.name}, as ${person.role}`);
    return ok(user);
  });

export interface MemberChange {
  readonly user: string;
  /** Version that was read. */
  readonly version: number;
  readonly to: { readonly role: MembershipRole } | { readonly ended: boolean } | { readonly password: string };
}

/** Changes a member's part, ends their access or gives it again, or gives them a new password. Whoever's access ends is signed out at once. */
export const changeMember = (
  company: AuthorizedCompany,
  by: string,
  { user, version, to }: MemberChange,
): Promise<Result<null, MemberRefusal>> =>
  database().$transaction(async (tx) => {
    await tx.$queryRaw`select id from company where id = ${company}::uuid for update`;
    const where = { companyId: company, userId: user };
    const member = await tx.membership.findFirst({ where, include: { user: { select: { name: true } } } });
    if (member?.version !== version) return failed("changed");
    const stays = member.endedAt === null && member.role === "supervisor";
    const leaves = ("role" in to && to.role !== "supervisor") || ("ended" in to && to.ended);
    const supervisors = await tx.membership.count({ where: { companyId: company, role: "supervisor", endedAt: null } });
    if (stays && leaves && supervisors < 2) return failed("last supervisor");
    if ("password" in to && (await tx.membership.count({ where: { userId: user, companyId: { not: company } } })) > 0)
      return failed("elsewhere too");
    const counted = { version: { increment: 1 } };
    if ("role" in to) await tx.membership.updateMany({ where, data: { role: to.role, ...counted } });
    if ("ended" in to) await tx.membership.updateMany({ where, data: { endedAt: to.ended ? new Date() : null, ...counted } });
    if ("password" in to) {
      await tx.account.updateMany({
        where: { userId: user, providerId: "credential" },
        data: { password: await hashPassword(to.password) },
      });
      await tx.membership.updateMany({ where, data: counted });
    }
    if ("password" in to || ("ended" in to && to.ended)) await tx.session.deleteMany({ where: { userId: user } });
    const [action, detail] = said(to, member.role);
    await note(tx, company, by, user, action, `${member.user.name}${detail}`);
    return ok(null);
  });

const said = (to: MemberChange["to"], was: string): readonly [string, string] => {
  if ("role" in to) return ["part changed", `: was ${was}, becomes ${to.role}`];
  if ("password" in to) return ["new password given", ""];
  return to.ended ? ["access ended", ""] : ["access given again", `, as ${was}`];
};

const note = async (tx: Transaction, companyId: string, by: string, user: string, action: string, detail: string): Promise<void> => {
  const { id } = await tx.membership.findUniqueOrThrow({ where: { companyId_userId: { companyId, userId: user } }, select: { id: true } });
  await writeAuditIn(tx, companyId, { user: by, action, detail, subject: { table: "Membership", id } });
};

export interface AccessLine {
  readonly id: string;
  readonly at: Date;
  readonly who: string | null;
  readonly action: string;
  readonly detail: string;
}

/** What was last done about who may come in, the newest first. */
export async function readAccessAudit(company: AuthorizedCompany, most: number): Promise<readonly AccessLine[]> {
  const rows = await database().auditEntry.findMany({
    where: { companyId: company, subject: "Membership" },
    include: { by: { include: { user: { select: { name: true } } } } },
    orderBy: { id: "desc" },
    take: most,
  });
  return rows.map(({ id, at, by, action, summary }) => ({ id, at, who: by?.user.name ?? null, action, detail: summary }));
}
