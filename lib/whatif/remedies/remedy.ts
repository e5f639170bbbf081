import type { PlainDate } from "#lib/calendar/plainDate";
import type { Skill } from "#lib/labour/skills";
import type { MinorUnits, Minutes } from "#lib/units/quantities";

/** Something that may be done about a plan, as a question: what would come of it? */
export type Remedy =
  /** `count` more makers of a skill, at full pace, for so many working days from a day on. */
  | { readonly kind: "maker"; readonly skill: Skill; readonly count: number; readonly days: number; readonly from: PlainDate }
  /** Hours after the day's work from a day on: of one maker, or of all who have a skill, so many each. */
  | {
      readonly kind: "overtime";
      readonly of: { readonly maker: string } | { readonly skill: Skill };
      readonly minutes: Minutes;
      readonly from: PlainDate;
    }
  /** Garments made out of the house, but for their patterns and fittings: price of one, and days by the calendar. */
  | { readonly kind: "outwork"; readonly garments: readonly string[]; readonly price: MinorUnits; readonly days: number }
  /** A parameter of a piece of the piece list set to something less. */
  | { readonly kind: "simplify"; readonly piece: string; readonly parameter: string; readonly value: string }
  /** A material there so many days sooner than its suppliers say. */
  | { readonly kind: "deliver"; readonly material: string; readonly days: number }
  /** One more machine of a kind, or one more fitting room. */
  | { readonly kind: "machine"; readonly machine: string };

/** So long an evening at most (common practice, no source): what a company's own agreement says comes first. */
export const OVERTIME_A_DAY: Minutes = 120;
