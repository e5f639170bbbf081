import { ok, type Result } from "#lib/result";
import { plainText, readRatio, scaled } from "./plainNumber";
import type { Minutes } from "./quantities";
import { type Unreadable, unreadable } from "./unreadable";

/** `3 h 30`, `45 min`, `3 h`. */
export const showHours = (minutes: Minutes): string => {
  if (minutes < 0) return `-${showHours(-minutes)}`;
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${String(rest).padStart(2, "0")}`;
};

/** Reads `3 h 30`, `3 h 30 min`, `3.5 h`, `3 1/2 h`, `3:30`, `45 min` or `45 minutes`; a number with no unit is refused. */
export const readHours = (text: string): Result<Minutes, Unreadable> => {
  const plain = plainText(text).toLowerCase();
  const clock = /^(\d{1,4}):([0-5]\d)$/.exec(plain);
  if (clock) return ok(Number(clock[1]) * 60 + Number(clock[2]));
  const both = /^(\d{1,4}) ?h(?:rs?|ours?)? ?([0-5]?\d)(?: ?m(?:in(?:utes)?)?)?$/.exec(plain);
  if (both) return ok(Number(both[1]) * 60 + Number(both[2]));
  const one = /^(.+?) ?(h(?:rs?|ours?)?|m(?:in(?:ute)?s?)?)$/.exec(plain);
  const ratio = one?.[1] ? readRatio(one[1]) : null;
  return ratio && one?.[2]
    ? ok(scaled(ratio, one[2].startsWith("h") ? 60 : 1))
    : unreadable(`"${text}" is not a length of time.`, "Write it like 3 h 30 or 45 min.");
};
