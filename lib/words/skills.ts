import type { BothWords } from "#lib/constructions/construction";
import type { Skill } from "#lib/labour/skills";
import { both } from "./bothWords";

export const SKILL_LABELS: Readonly<Record<Skill, BothWords>> = {
  net: both("Net and tutu"),
  pattern: both("Pattern"),
  boned: both("Boned bodice"),
  tailoring: both("Tailoring"),
  stretch: both("Stretch"),
  hand: both("Hand finish"),
  dye: both("Dye"),
  millinery: both("Millinery"),
  fit: both("Fitting"),
};
