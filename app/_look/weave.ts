import type { Skill } from "#lib/labour/skills";

const WEAVES: Readonly<Record<Skill, number>> = {
  net: 1,
  pattern: 2,
  boned: 3,
  tailoring: 4,
  stretch: 5,
  hand: 6,
  dye: 7,
  millinery: 8,
  fit: 6,
};

/** Number of the pattern and thread (1 to 8) a skill is drawn in. Fitting is hand work and takes its weave; on a picture it is a pin. */
export const weaveOf = (skill: Skill): number => WEAVES[skill];
