import type { BothWords } from "#lib/constructions/construction";

/** Words in both usages; one argument when both say the same. */
export const both = (uk: string, us: string = uk): BothWords => ({ uk, us });
