import { ok, type Result } from "#lib/result";
import type { MinorUnits } from "./quantities";
import { type Unreadable, unreadable } from "./unreadable";

/** Whether `code` is a currency the platform knows (ISO 4217). */
export const isCurrency = (code: string): boolean => Intl.supportedValuesOf("currency").includes(code);

/** Decimal places of a currency: 2 for GBP, 0 for JPY, 3 for KWD (ISO 4217, by the platform's tables). */
export const currencyDigits = (currency: string): number =>
  new Intl.NumberFormat("en-GB", { style: "currency", currency }).resolvedOptions().maximumFractionDigits ?? 2;

/**
 * Reads `1,234.50`, `1234.5`, `1.234,50`, `1 234,50`, `£12` or `12 GBP` into minor units, exactly.
 * One mark before three digits: a comma marks thousands and a point decimals; refused where the currency's places say otherwise.
 */
export const readMoney = (text: string, currency: string): Result<MinorUnits, Unreadable> => {
  const digits = currencyDigits(currency);
  const mend = `Write it like 1,234${digits > 0 ? `.${"50000".slice(0, digits)}` : ""}, in ${currency}.`;
  const plain = text
    .replace(/\p{Sc}/gu, "")
    .replace(new RegExp(currency, "i"), "")
    .replace(/(\d)[\s'’](?=\d{3})/gu, "$1")
    .trim();
  const point = decimalPoint(plain, digits);
  if (point === "doubtful") return unreadable(`"${text}" may mean thousands or decimals.`, mend);
  const [whole = "", places = ""] = point === null ? [plain] : [plain.slice(0, point), plain.slice(point + 1)];
  if (!/^(?:\d+|\d{1,3}(?:,\d{3})+|\d{1,3}(?:\.\d{3})+)$/.test(whole) || (point !== null && !/^\d+$/.test(places)))
    return unreadable(`"${text}" is not an amount of money.`, mend);
  if (places.length > digits) return unreadable(`"${text}" has parts smaller than ${currency} has.`, mend);
  const amount = Number(whole.replace(/[.,]/g, "") + places.padEnd(digits, "0"));
  return Number.isSafeInteger(amount) ? ok(amount) : unreadable(`"${text}" is too large.`, mend);
};

/** Where the decimals begin; null when there are none. */
const decimalPoint = (plain: string, digits: number): number | null | "doubtful" => {
  const marks = [...plain.matchAll(/[.,]/g)];
  const last = marks.at(-1);
  if (!last) return null;
  if (marks.length > 1) return marks.filter((mark) => mark[0] === last[0]).length === 1 ? last.index : null;
  if (plain.length - last.index !== 4) return last.index;
  if (last[0] === ",") return digits === 3 ? "doubtful" : null;
  return digits === 3 ? last.index : "doubtful";
};

/** `£1,234.50` in the company's usage. */
export const showMoney = (amount: MinorUnits, currency: string, usage: "uk" | "us" = "uk"): string =>
  new Intl.NumberFormat(usage === "uk" ? "en-GB" : "en-US", { style: "currency", currency }).format(
    amount / 10 ** currencyDigits(currency),
  );

/** `1234.50`: no sign and no thousands mark, as a file wants it; reads back to the same amount. */
export const writeMoney = (amount: MinorUnits, currency: string): string => {
  const digits = currencyDigits(currency);
  const text = String(amount).padStart(digits + 1, "0");
  return digits === 0 ? text : `${text.slice(0, -digits)}.${text.slice(-digits)}`;
};
