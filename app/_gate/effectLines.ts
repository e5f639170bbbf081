import type { PlainDate } from "#lib/calendar/plainDate";
import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { editEffect } from "#lib/whatif/editEffect";
import { listed, plural } from "../_data/plural";
import { goodsLines } from "./goodsLines";

/** What follows from an edit, in sentences that may cross to the browser. */
export interface EffectLines {
  /** What is changed, cell by cell. */
  readonly says: readonly string[];
  /** What that does to garments, work, fittings and free hours. */
  readonly follows: readonly string[];
}

const MOST_SAID = 40;
const MOST_NUMBERS = 12;

export const effectLines = (before: Staging, after: Staging, today: PlainDate): EffectLines => {
  const effect = editEffect(before, after, today);
  const says = effect.changes.map(({ text }) => text);
  const numbers = (all: readonly string[]) =>
    listed(all.length > MOST_NUMBERS ? [...all.slice(0, MOST_NUMBERS), `${all.length - MOST_NUMBERS} more`] : all);
  const { added, gone, otherwise, work, fittings, free } = effect;
  const follows = [
    ...(added.length > 0 ? [`${plural(added.length, "garment")} more: ${numbers(added.map(({ number }) => number))}.`] : []),
    ...(gone.length > 0 ? [`${plural(gone.length, "garment")} fewer: ${numbers(gone.map(({ number }) => number))}.`] : []),
    ...(otherwise.length > 0 ? [`${plural(otherwise.length, "garment")} made or worn otherwise: ${numbers(otherwise)}.`] : []),
    ...difference("Work on garments", work, showHours),
    ...difference("Fittings", fittings, String),
    ...difference("Free hours of the workroom until the last milestone", free, showHours),
    ...goodsLines(effect.goods, after.production),
  ];
  return {
    says: says.length > MOST_SAID ? [...says.slice(0, MOST_SAID), `And ${says.length - MOST_SAID} more.`] : says,
    follows: follows.length > 0 ? follows : ["Garments, work, fittings, free hours and goods stay as they are."],
  };
};

const difference = (
  what: string,
  { before, after }: { readonly before: number; readonly after: number },
  show: (value: number) => string,
) =>
  before === after
    ? []
    : [`${what}: ${show(before)} before, ${show(after)} after (${after > before ? "+" : "−"}${show(Math.abs(after - before))}).`];
