import { ok, type Result } from "#lib/result";
import { type Unreadable, unreadable } from "#lib/units/unreadable";
import { dateOf } from "./days";
import type { PlainDate } from "./plainDate";

const MONTHS = ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"];
const MEND = "Write it like 2027-03-09 or 9 March 2027.";

/**
 * Reads a day as people and spreadsheets write it: `2027-03-09`, `9 March 2027`, `Tue 9 Mar 2027`, `March 9, 2027`, `13/03/2027`.
 * Numbers alone are refused where both may be the month (`09/03/2027`), and so are a spreadsheet's serial numbers (`46455`) and
 * years of two digits: guessing wrong moves a fitting by months.
 */
export const readDate = (text: string): Result<PlainDate, Unreadable> => {
  const plain = text.trim().replace(/\s+/gu, " ");
  if (/^\d{4,6}(\.\d+)?$/.test(plain))
    return unreadable(`"${text}" is a spreadsheet's number for a day.`, `Format the column as a date. ${MEND}`);
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ]00:00(?::00)?(?:\.0+)?)?$/.exec(plain);
  if (iso) return existing(text, Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const numbers = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4})$/.exec(plain);
  if (numbers) return inNumbers(text, Number(numbers[1]), Number(numbers[2]), Number(numbers[3]));
  return inWords(text, plain.toLowerCase().replace(/^(?:mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|satu?r?|sun)(?:day)?,? /, ""));
};

const existing = (text: string, year: number, month: number, day: number): Result<PlainDate, Unreadable> => {
  const date = dateOf(year, month, day);
  return date ? ok(date) : unreadable(`There is no day "${text}".`, MEND);
};

const inNumbers = (text: string, first: number, second: number, year: number): Result<PlainDate, Unreadable> => {
  if (first === second || (first > 12 && second <= 12)) return existing(text, year, second, first);
  if (second > 12 && first <= 12) return existing(text, year, first, second);
  return first <= 12 ? unreadable(`"${text}" may be one of two days.`, MEND) : unreadable(`There is no day "${text}".`, MEND);
};

const inWords = (text: string, plain: string): Result<PlainDate, Unreadable> => {
  const dayFirst = /^(\d{1,2})(?:st|nd|rd|th)?[ -]([a-z]+)\.?,?[ -](\d{4})$/.exec(plain);
  const monthFirst = /^([a-z]+)\.? (\d{1,2})(?:st|nd|rd|th)?,? (\d{4})$/.exec(plain);
  const [day, name, year] = dayFirst ? dayFirst.slice(1) : monthFirst ? [monthFirst[2], monthFirst[1], monthFirst[3]] : [];
  const month = name && name.length >= 3 ? MONTHS.findIndex((each) => each.startsWith(name)) + 1 : 0;
  if (month === 0) return unreadable(`"${text}" is not a day.`, MEND);
  return existing(text, Number(year), month, Number(day));
};
