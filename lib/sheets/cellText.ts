import type { XlsxCell } from "#lib/exchange/writeXlsx";

/** A cell of a workbook as a text file has it: a day as `2027-03-09`, an amount with its places. */
export const cellText = (cell: XlsxCell): string => {
  if (cell === null) return "";
  if (typeof cell !== "object") return String(cell);
  return "day" in cell ? cell.day : cell.amount.toFixed(cell.places);
};
