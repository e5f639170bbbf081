import type { PlainDate } from "#lib/calendar/plainDate";
import { showDay } from "#lib/calendar/showDay";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { showMoney } from "#lib/units/money";

/** `one garment`, `12 garments`. */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count === 1 ? "one" : count} ${count === 1 ? one : many}`;

/** `one, two, three and 4 more`. */
export const listed = (items: readonly string[], most = 6): string =>
  items.length <= most ? items.join(", ") : `${items.slice(0, most).join(", ")} and ${items.length - most} more`;

export const dayOr = (day: PlainDate | null, otherwise = ""): string => (day === null ? otherwise : showDay(day));

/** Money as the production writes it. */
export const moneyOf =
  ({ staging: { production } }: Pick<StagingPlan, "staging">) =>
  (amount: number): string =>
    showMoney(amount, production.currency, production.words);

/** Sum of numbers. */
export const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
