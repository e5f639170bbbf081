import { configureGlobal } from "fast-check";

/**
 * Property tests draw the same values at every run, so that a check that failed can be made to fail again. To look further,
 * give another seed: `PROPERTY_SEED=7 npm test -- --only unit`.
 */
configureGlobal({ seed: Number(process.env.PROPERTY_SEED ?? 1) });
