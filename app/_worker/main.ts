/**
 * The job process: takes levelling jobs from the queue in the database, one at a time. Several may run beside each other.
 *
 *   DATABASE_URL=... node .build/worker.mjs
 */
import { Logger, run } from "graphile-worker";
import { pino } from "pino";
import { closeDatabase } from "#prisma/client";
import { helpPlan } from "./helpPlan";
import { asLevelJob, asRemedyJob } from "./levelJob";
import { levelProduction } from "./levelProduction";
import { asCutJob, proveCutting } from "./proveCutting";

const connectionString = process.env.DATABASE_URL;
if (!connectionString) {
  console.error("DATABASE_URL is not set. It names the database whose jobs are to be done.");
  process.exit(2);
}

const log = pino({ name: "jobs" });
/** When this process is asked to end, a search under way ends too and keeps its best plan. */
const ending = new AbortController();

const runner = await run({
  connectionString,
  concurrency: 1,
  noHandleSignals: true,
  parsedCronItems: [],
  logger: new Logger(() => (level, message) => log[level === "warning" ? "warn" : level](message)),
  taskList: {
    level: (payload) => levelProduction(asLevelJob(payload), { signal: ending.signal, log }),
    remedies: (payload) => helpPlan(asRemedyJob(payload), { signal: ending.signal, log }),
    cuts: (payload) => proveCutting(asCutJob(payload), { signal: ending.signal, log }),
  },
});

for (const signal of ["SIGTERM", "SIGINT"] as const) {
  process.once(signal, () => {
    ending.abort();
    void runner.stop();
  });
}
await runner.promise;
await closeDatabase();
