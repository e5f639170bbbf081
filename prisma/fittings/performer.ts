import type { Transaction } from "../client";

/** Id of a performer of the company by code. Throws when there is none: fittings are of people in the plan. */
export const performerId = async (tx: Transaction, companyId: string, code: string): Promise<string> =>
  (await tx.performer.findUniqueOrThrow({ where: { companyId_code: { companyId, code } }, select: { id: true } })).id;
