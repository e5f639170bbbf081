import type { Measures } from "#lib/levelling/problem";
import type { AuthorizedCompany } from "#prisma/authorized";
import { reportRun } from "#prisma/plans/runs";

const EVERY_MS = 500;

interface Search {
  /** Aborted when somebody asks the run to stop, or this process is to end. */
  readonly stop: AbortSignal;
  readonly onProgress: (round: number, best: Measures) => void;
}

/** Lets a search go on, and meanwhile writes its progress into the run and passes on the wish to stop. */
export async function reportWhile<T>(
  company: AuthorizedCompany,
  runId: string,
  ending: AbortSignal,
  search: (search: Search) => Promise<T>,
): Promise<T> {
  const asked = new AbortController();
  let last: { round: number; best: Measures } | null = null;
  let reporting: Promise<void> = Promise.resolve();
  const report = async (): Promise<void> => {
    if (last && (await reportRun(company, runId, last)).stop) asked.abort();
  };
  const timer = setInterval(() => {
    // One after the other, however slow the database is. A report that fails is made good by the next.
    reporting = reporting.then(report).catch(() => undefined);
  }, EVERY_MS);
  try {
    return await search({
      stop: AbortSignal.any([asked.signal, ending]),
      onProgress: (round, best) => {
        last = { round, best };
      },
    });
  } finally {
    clearInterval(timer);
    await reporting;
  }
}
