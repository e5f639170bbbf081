import type { Production } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { showMoney } from "#lib/units/money";
import type { SourceRow } from "#lib/whatif/compareSources";
import { timeCell } from "./cells";
import type { Sheet } from "./sheet";

/** The sources of a piece side by side, in the money and words of the production. */
export const sourcesSheet = (rows: readonly SourceRow[], title: string, { currency, words }: Production): Sheet => {
  const money = (amount: number) => showMoney(amount, currency, words);
  return {
    name: "sources",
    title,
    headings: [
      "source",
      "low",
      "likely",
      "high",
      "fittings",
      "labour",
      "materials",
      "price",
      "total",
      "finish",
      "in_time",
      "late_in_all",
      "why",
    ],
    rows: rows.map(({ source, current, why, figures }) => {
      const name = current ? `${source} *` : source;
      if (!figures) return [name, ...Array.from({ length: 11 }, () => ""), why.join(" ")];
      const { minutes, fittingMinutes, labour, materials, price, total, finish, due, lateGarments } = figures;
      const inTime = finish === null ? "" : finish <= due ? "yes" : "no";
      return [
        name,
        ...minutes.map(showHours),
        showHours(fittingMinutes),
        ...[labour, materials, price, total].map(money),
        timeCell(finish),
        inTime,
        String(lateGarments),
        why.join(" "),
      ];
    }),
  };
};
