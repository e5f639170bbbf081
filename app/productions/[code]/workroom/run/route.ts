import { latestRun } from "#prisma/plans/runs";
import { requireProduction } from "../../../../_data/requireProduction";
import { runWords } from "../runWords";

/** How far the newest levelling is: what the workroom asks each second. */
export const GET = async (_request: Request, { params }: { readonly params: Promise<{ readonly code: string }> }): Promise<Response> => {
  const { member, view } = await requireProduction("read", (await params).code);
  const run = await latestRun(member.company, view.prepared.staging.production.code);
  return Response.json(run ? runWords(run) : null, { headers: { "cache-control": "private, no-store" } });
};
