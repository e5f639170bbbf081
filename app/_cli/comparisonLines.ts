import { showWall } from "#lib/calendar/showDay";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { comparisonSheets } from "#lib/sheets/comparisonSheets";
import { showHours } from "#lib/units/hours";
import { showMoney } from "#lib/units/money";
import type { PlanComparison } from "#lib/whatif/comparePlans";
import { columns } from "./columns";
import { sheetLines } from "./sheetLines";

/** More than that nobody reads in a terminal. */
const MOST_ROWS = 50;

/** Two plans side by side in a few lines, then the tables of what changes. */
export const comparisonLines = (compared: PlanComparison, plan: StagingPlan): string => {
  const { before, after } = compared;
  const { currency, words } = plan.staging.production;
  const money = (amount: number) => showMoney(amount, currency, words);
  const line = (label: string, one: number, other: number, shown: (figure: number) => string) => [
    label,
    shown(one),
    shown(other),
    one === other ? "the same" : `${other > one ? "+" : ""}${shown(other - one)}`,
  ];
  const totals = [
    ["", "before", "after", "change"],
    line("garments", before.garments, after.garments, String),
    line("work", before.minutes, after.minutes, showHours),
    ...(before.otherMinutes + after.otherMinutes === 0 ? [] : [line("other work", before.otherMinutes, after.otherMinutes, showHours)]),
    line("fittings", before.fittings, after.fittings, String),
    line("fitting time", before.fittingMinutes, after.fittingMinutes, showHours),
    line("cost", before.cost, after.cost, money),
    line("overtime", before.overtimeMinutes, after.overtimeMinutes, showHours),
    line("late garments", before.lateGarments, after.lateGarments, String),
    ["finish", showWall(before.finish), showWall(after.finish), before.finish === after.finish ? "the same" : ""],
  ];
  return [
    ...columns(totals),
    ...comparisonSheets(compared, plan).flatMap((sheet) => sheetLines(sheet, MOST_ROWS, ": --out DIR writes them all.")),
    "",
  ].join("\n");
};
