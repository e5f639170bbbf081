import { z } from "zod";
import type { LevelJob } from "#prisma/plans/runs";

const shape = z.object({ companyId: z.uuid(), runId: z.uuid(), productionCode: z.string().min(1) });

/** What the queue holds, checked: it may come from an older version. @throws when it is no levelling job */
export const asLevelJob = (payload: unknown): LevelJob => shape.parse(payload);
