import type { AuthorizedCompany } from "../authorized";
import { database } from "../client";

/** Asks the job process to search for better cutting plans of a production; one that waits already is asked once. */
export async function askForCuts(company: AuthorizedCompany, productionCode: string): Promise<void> {
  const job = JSON.stringify({ companyId: company, productionCode });
  await database()
    .$queryRaw`select 1 from graphile_worker.add_job('cuts', ${job}::json, job_key := ${`cuts ${company} ${productionCode}`}, max_attempts := 1)`;
}

/** Whether such a search waits or is under way. */
export async function cutsAreSought(company: AuthorizedCompany, productionCode: string): Promise<boolean> {
  const rows = await database().$queryRaw<{ n: bigint }[]>`
    select count(*) as n from graphile_worker.jobs where key = ${`cuts ${company} ${productionCode}`}`;
  return Number(rows[0]?.n ?? 0) > 0;
}
