/**
 * The skills of a costume workroom (TRADE: skills matrix, common practice, no source). `fit` is the skill of
 * running a fitting; the other eight are the skills of making.
 */
export const SKILLS = ["net", "pattern", "boned", "tailoring", "stretch", "hand", "dye", "millinery", "fit"] as const;
export type Skill = (typeof SKILLS)[number];
