import * as z from "zod";
import { isZone } from "#lib/calendar/zone";
import { ok } from "#lib/result";
import { isCurrency } from "#lib/units/money";
import { unreadable } from "#lib/units/unreadable";
import { cell, orNull } from "../cells/cell";
import { money, wholeNumber } from "../cells/numbers";
import { day } from "../cells/times";
import { anyText, codeText, oneOf, someText } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

/** Nobody is asked more often. */
const MOST_VISITS = 99;

const currencyCode = () =>
  cell(
    (text) =>
      isCurrency(text.toUpperCase())
        ? ok(text.toUpperCase())
        : unreadable(`"${text}" is not a currency.`, "Write its three letters, like GBP."),
    (code) => code,
  );

const zoneName = () =>
  cell(
    (text) => (isZone(text) ? ok(text) : unreadable(`"${text}" is not a time zone.`, "Write its IANA name, like Europe/London.")),
    (zone) => zone,
  );

export const production = stagingFile({
  name: "production.csv",
  about: "The production itself: one row.",
  key: ["code"],
  schema: ({ currency }) =>
    z.object({
      code: column(codeText(), { meaning: "Short name of the production", example: "midwinter" }),
      title: column(someText(), { meaning: "Title on screens and lists", example: "The Midwinter Garden" }),
      subtitle: column(anyText(), { meaning: "Second line of the title", example: "Ballet in two acts", empty: "none" }),
      workroom: column(someText(), { meaning: "Workroom that makes it", example: "Main workroom" }),
      starts: column(day(), { meaning: "First day for which work may be planned", unit: "day", example: "2027-01-11" }),
      budget: column(orNull(money(currency)), {
        meaning: "Budget for materials and labour",
        unit: "money",
        example: "42,000.00",
        empty: "no budget set",
      }),
      currency: column(currencyCode(), { meaning: "Currency of all money in the staging (ISO 4217)", example: "GBP" }),
      zone: column(zoneName(), { meaning: "Time zone of the workroom (IANA)", example: "Europe/London" }),
      words: column(oneOf(["uk", "us"]), { meaning: "Usage of the trade's words", example: "uk" }),
      lengths: column(oneOf(["in", "cm"]), { meaning: "Unit lengths are shown in, and that of a bare number", example: "in" }),
      prefix: column(codeText(), { meaning: "Letters before a garment's number", example: "MG" }),
      visitsPerWeek: column(orNull(wholeNumber(1, MOST_VISITS)), {
        meaning: "Most visits of one performer to the fitting room in a week",
        unit: "count",
        example: "3",
        empty: "five (common practice, no source)",
      }),
    }),
});
