import type { Minutes } from "#lib/units/quantities";

/** When a performer may be called to a fitting: rules of the company's own agreement, as data. */
export interface FittingRules {
  /** A fitting starts and ends on a multiple of this. */
  readonly step: Minutes;
  /** So much rehearsal, with no break as long as the free time in it ... */
  readonly rehearsalBeforeRest: Minutes;
  /** ... earns this much free time after it. */
  readonly restAfterRehearsal: Minutes;
  /** Longest span of a working day; nothing after it. */
  readonly longestSpan: Minutes;
  /** Most visits of one performer in a week, where the production says nothing else. */
  readonly visitsPerWeek: number;
}

/**
 * From published dancers' agreements: fittings counted in fifteen-minute units inside the work span
 * (costume fittings, sample agreement clauses, lawinsider.com/clause/costume-fittings); not in the free hour after three rehearsal
 * hours, nor outside an eleven-hour span (dancers' agreement 2007-2011, yumpu.com/en/document/view/41318235).
 * Five visits in a week, one for each day of class: common practice, no source. A company's own agreement comes first.
 */
export const DEFAULT_RULES: FittingRules = {
  step: 15,
  rehearsalBeforeRest: 180,
  restAfterRehearsal: 60,
  longestSpan: 660,
  visitsPerWeek: 5,
};
