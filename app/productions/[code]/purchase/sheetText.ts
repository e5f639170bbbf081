import { writeCsv } from "#lib/exchange/writeCsv";
import type { XlsxSheet } from "#lib/exchange/writeXlsx";
import { cellText } from "#lib/sheets/cellText";

/** A sheet as text, for spreadsheets of any kind. */
export const sheetText = ({ headings, rows }: XlsxSheet): string =>
  writeCsv(
    headings,
    rows.map((row) => row.map(cellText)),
    true,
  );
