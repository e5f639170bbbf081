import type { Production } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { showMoney } from "#lib/units/money";
import type { RemedyAnswer, WhatHelps } from "#lib/whatif/remedies/whatHelps";
import { listCell, timeCell } from "./cells";
import type { Sheet } from "./sheet";

/** What would help, the best first, below the plan with nothing changed. */
export const remediesSheet = ({ unchanged, answers }: WhatHelps, { currency, words }: Production): Sheet => {
  const row = (what: string, { lateGarments, finish, overtimeMinutes, cost }: WhatHelps["unchanged"], rest: readonly string[]) => [
    what,
    String(lateGarments),
    timeCell(finish),
    showHours(overtimeMinutes),
    showMoney(cost, currency, words),
    ...rest,
  ];
  return {
    name: "remedies",
    title: "What would help, the best first",
    headings: ["remedy", "late", "finish", "overtime", "cost", "change", "in_time_then", "sooner_then", "late_then"],
    rows: [
      row("Nothing changed", unchanged, ["", "", "", ""]),
      ...answers.map(({ asks, tried, refused }: RemedyAnswer) => {
        if (tried === null) return [asks, "", "", "", "", refused ?? "", "", "", ""];
        const change = tried.figures.cost - unchanged.cost;
        const money = `${change < 0 ? "-" : "+"}${showMoney(Math.abs(change), currency, words)}`;
        return row(asks, tried.figures, [money, listCell(tried.mended), listCell(tried.eased), listCell(tried.spoiled)]);
      }),
    ],
  };
};
