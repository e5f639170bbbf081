import type { PlainDate } from "#lib/calendar/plainDate";
import type { MilestoneKind } from "#lib/staging/staging";
import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import { plainDate } from "../plainDates";

export interface ListedProduction {
  readonly code: string;
  readonly title: string;
  readonly subtitle: string;
  readonly starts: PlainDate;
  /** In order of time. */
  readonly milestones: readonly { readonly code: string; readonly kind: MilestoneKind; readonly name: string; readonly date: PlainDate }[];
}

/** The company's productions, the one that starts last first. */
export async function listProductions(company: AuthorizedCompany): Promise<readonly ListedProduction[]> {
  const rows = await database().production.findMany({
    where: { companyId: company },
    include: { milestones: { orderBy: [{ date: "asc" }, { at: "asc" }, { position: "asc" }] } },
    orderBy: [{ starts: "desc" }, { code: "asc" }],
  });
  return rows.map(({ code, title, subtitle, starts, milestones }) => ({
    code,
    title,
    subtitle,
    starts: plainDate(starts),
    milestones: milestones.map((milestone) => ({
      code: milestone.code,
      kind: milestone.kind as MilestoneKind,
      name: milestone.name,
      date: plainDate(milestone.date),
    })),
  }));
}
