import type { BothWords } from "#lib/constructions/construction";
import * as labels from "./labels";
import { MEASUREMENT_LABELS } from "./measurements";
import { SKILL_LABELS } from "./skills";
import { SOURCE_LABELS } from "./sources";
import { TRADE } from "./trade";

export type Usage = "uk" | "us";

/** Every word a screen, list or file shows, in both usages: the one place they come from. */
const ALL = {
  trade: TRADE,
  skills: SKILL_LABELS,
  sources: SOURCE_LABELS,
  milestones: labels.MILESTONE_LABELS,
  fittings: labels.FITTING_LABELS,
  employment: labels.EMPLOYMENT_LABELS,
  standing: labels.STANDING_LABELS,
  calls: labels.CALL_LABELS,
  bodies: labels.BODY_LABELS,
  states: labels.STATE_LABELS,
  conditions: labels.CONDITION_LABELS,
  measurements: MEASUREMENT_LABELS,
} as const;

export type Words = { readonly [G in keyof typeof ALL]: Readonly<Record<keyof (typeof ALL)[G], string>> };

const inUsage = (usage: Usage): Words =>
  Object.fromEntries(
    Object.entries(ALL).map(([group, words]) => [
      group,
      Object.fromEntries(Object.entries<BothWords>(words).map(([key, word]) => [key, word[usage]])),
    ]),
  ) as Words;

const BY_USAGE: Readonly<Record<Usage, Words>> = { uk: inUsage("uk"), us: inUsage("us") };

/** The company's words: `words("us").trade.toile` is "muslin". */
export const words = (usage: Usage): Words => BY_USAGE[usage];
