import { ok, type Result } from "#lib/result";
import { plainText, readRatio, scaled } from "./plainNumber";
import type { PerMille } from "./quantities";
import { type Unreadable, unreadable } from "./unreadable";

/** Reads `75%`, `7.5 %` or `750‰`. A number with no sign is refused: 0.75 and 75 are both written for three quarters. */
export const readPerMille = (text: string): Result<PerMille, Unreadable> => {
  const found = /^(.*?) ?([%‰])$/.exec(plainText(text));
  const ratio = found?.[1] ? readRatio(found[1]) : null;
  return ratio
    ? ok(scaled(ratio, found?.[2] === "%" ? 10 : 1))
    : unreadable(`"${text}" is not a share.`, "Write it with its sign, like 75%.");
};

/** `75%`, `7.5%`; reads back to the same share. */
export const showPerMille = (share: PerMille): string => `${share / 10}%`;
