import { type AuthorizedCompany, authorizeCompany } from "#prisma/authorized";
import { database } from "#prisma/client";
import { createUser } from "#prisma/people/users";

/** A new, empty company. */
export async function newCompany(code: string): Promise<AuthorizedCompany> {
  const { id } = await database().company.create({ data: { code, name: code } });
  return authorizeCompany(id);
}

/** A supervisor of it, who may sign in. */
export const newSupervisor = (company: AuthorizedCompany, name: string): Promise<string> =>
  database().$transaction((tx) =>
    createUser(tx, company, { name, email: `${name.toLowerCase()}@example.org`, password: "long enough for a test", role: "supervisor" }),
  );
