import type { XlsxCell } from "#lib/exchange/writeXlsx";
import { currencyDigits } from "#lib/units/money";
import type { MinorUnits } from "#lib/units/quantities";

/** An amount as a cell of a workbook: a number with the currency's places. */
export const moneyCell = (amount: MinorUnits, currency: string): XlsxCell => {
  const places = currencyDigits(currency);
  return { amount: amount / 10 ** places, places };
};
