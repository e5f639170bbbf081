import { type AuthorizedCompany, authorizeCompany } from "../authorized";
import { database } from "../client";

export type { AuthorizedCompany } from "../authorized";

export const ROLES = ["supervisor", "cutter", "maker", "buyer", "designer", "stage management", "reader"] as const;
export type MembershipRole = (typeof ROLES)[number];

export interface FoundMembership {
  /** Proof that the user belongs to it: the session gate asks here. */
  readonly company: AuthorizedCompany;
  readonly companyName: string;
  readonly role: MembershipRole;
}

/** Every company a user belongs to now, by name. */
export async function membershipsOf(userId: string): Promise<readonly FoundMembership[]> {
  const rows = await database().membership.findMany({
    where: { userId, endedAt: null },
    include: { company: { select: { name: true } } },
    orderBy: [{ company: { name: "asc" } }, { id: "asc" }],
  });
  return rows.map((row) => ({
    company: authorizeCompany(row.companyId),
    companyName: row.company.name,
    role: row.role as MembershipRole,
  }));
}

/** The company a user comes into: the first by name; null when they belong to none. */
export const findMembership = async (userId: string): Promise<FoundMembership | null> => (await membershipsOf(userId))[0] ?? null;
