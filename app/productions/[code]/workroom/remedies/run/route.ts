import { latestRemedyRun } from "#prisma/plans/remedyRuns";
import { requireProduction } from "../../../../../_data/requireProduction";
import { remedyWords } from "../remedyWords";

/** How far the newest search for remedies is: what its page asks each second. */
export const GET = async (_request: Request, { params }: { readonly params: Promise<{ readonly code: string }> }): Promise<Response> => {
  const { member, view } = await requireProduction("read", (await params).code);
  const run = await latestRemedyRun(member.company, view.productionId);
  return Response.json(run ? remedyWords(run) : null, { headers: { "cache-control": "private, no-store" } });
};
