import type { Construction } from "#lib/constructions/construction";
import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";

/** The newest version of each construction the company has, by code. */
export async function keptConstructions(company: AuthorizedCompany): Promise<readonly Construction[]> {
  const rows = await database().construction.findMany({
    where: { companyId: company },
    orderBy: { code: "asc" },
    select: { constructionVersions: { select: { data: true }, orderBy: { number: "desc" }, take: 1 } },
  });
  return rows.flatMap((row) => row.constructionVersions.map((version) => version.data as unknown as Construction));
}
