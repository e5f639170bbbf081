import { z } from "zod";
import type { RemedyJob } from "#prisma/plans/remedyRuns";
import type { LevelJob } from "#prisma/plans/runs";

const shape = z.object({ companyId: z.uuid(), runId: z.uuid(), productionCode: z.string().min(1) });

/** What the queue holds, checked: it may come from an older version. @throws when it is no levelling job */
export const asLevelJob = (payload: unknown): LevelJob => shape.parse(payload);

/** The same of a search for remedies. @throws when it is none */
export const asRemedyJob = (payload: unknown): RemedyJob => shape.parse(payload);
