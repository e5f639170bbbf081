import { createHash } from "node:crypto";
import { type CutAnswer, type CutQuestion, type FoundCuts, questionName } from "#lib/cutting/question";
import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";
import type { Prisma } from "../generated/client";
import { newId } from "../ids";

const digest = (question: CutQuestion): string => createHash("sha256").update(questionName(question)).digest("hex");

/** Keeps the best answer to a question so far; `ended`: nothing more is being looked for. One with no better figures is passed over. */
export async function keepAnswer(company: AuthorizedCompany, question: CutQuestion, answer: CutAnswer, ended: boolean): Promise<void> {
  const companyId: string = company;
  const job = digest(question);
  const { used: count, bound } = answer;
  const patterns = JSON.parse(JSON.stringify(answer)) as Prisma.InputJsonValue;
  const at = new Date();
  const key = { companyId_job: { companyId, job } };
  await database().$transaction(async (tx) => {
    const kept = await tx.cuttingProof.findUnique({ where: key, select: { count: true, bound: true } });
    if (!kept) await tx.cuttingProof.create({ data: { id: newId(), companyId, job, count, bound, patterns, ended, at } });
    else if (count < kept.count || (count === kept.count && bound >= kept.bound))
      await tx.cuttingProof.update({ where: key, data: { count, bound, patterns, ended, at } });
    else if (ended) await tx.cuttingProof.update({ where: key, data: { ended, at } });
  });
}

/** Answers kept so far, and which questions nothing more is looked for. */
interface KeptCuts {
  readonly isEmpty: boolean;
  readonly found: FoundCuts;
  readonly isEnded: (question: CutQuestion) => boolean;
}

/** All answers a company has kept: a question is asked by lengths alone, so that one answer serves every job that is cut alike. */
export async function loadFoundCuts(company: AuthorizedCompany): Promise<KeptCuts> {
  const rows = await database().cuttingProof.findMany({
    where: { companyId: company },
    select: { job: true, patterns: true, ended: true },
  });
  const kept = new Map(rows.map((row) => [row.job, row]));
  return {
    isEmpty: kept.size === 0,
    found: (question) => (kept.get(digest(question))?.patterns as unknown as CutAnswer | undefined) ?? null,
    isEnded: (question) => kept.get(digest(question))?.ended === true,
  };
}

/** Grows with every answer that is kept: what a page computed with older ones is stale. */
export async function cutsRevision(company: AuthorizedCompany): Promise<string> {
  const last = await database().cuttingProof.aggregate({ where: { companyId: company }, _max: { at: true }, _count: true });
  return `${last._count} ${last._max.at?.getTime() ?? 0}`;
}
