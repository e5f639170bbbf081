import { makerCosts } from "#lib/planning/labourCost";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { showHours } from "#lib/units/hours";
import type { MinorUnits, Minutes } from "#lib/units/quantities";
import { words } from "#lib/words/words";
import type { Answer, Asked } from "./answer";
import { counted, moneyOf, sum } from "./told";

export interface Budget {
  /** Null: none is set. */
  readonly budget: MinorUnits | null;
  readonly labour: MinorUnits;
  /** What overtime costs of it. */
  readonly overtime: MinorUnits;
  /** The purchase list, carriage included. */
  readonly materials: MinorUnits;
  /** Bought and hired garments. */
  readonly garments: MinorUnits;
  readonly total: MinorUnits;
  /** Above nothing: over budget. */
  readonly over: MinorUnits | null;
  readonly makers: readonly { readonly maker: string; readonly minutes: Minutes; readonly overtime: Minutes; readonly cost: MinorUnits }[];
  readonly suppliers: readonly { readonly supplier: string; readonly lines: number; readonly cost: MinorUnits }[];
  /** Work without a place and materials nobody offers: not in the sums. */
  readonly left: { readonly tasks: number; readonly materials: number };
}

/** What the plan comes to at its end, by labour and by material, against the budget. */
export const budgetAtCompletion = ({ staging, problem, answer, purchase }: StagingPlan): Budget => {
  const makers = makerCosts(problem, answer.plan);
  const rate = new Map(staging.makers.map((maker) => [maker.code, maker.overtimeCostPerHour]));
  const labour = sum(makers.map(({ cost }) => cost));
  const total = labour + purchase.total;
  const { budget } = staging.production;
  const suppliers = [...new Set(purchase.lines.map(({ supplier }) => supplier))].map((supplier) => {
    const lines = purchase.lines.filter((line) => line.supplier === supplier);
    return { supplier, lines: lines.length, cost: sum(lines.map(({ cost }) => cost)) };
  });
  return {
    budget,
    labour,
    overtime: sum(makers.map((maker) => Math.round((maker.overtime * rate.get(maker.maker)!) / 60))),
    materials: purchase.materials,
    garments: purchase.total - purchase.materials,
    total,
    over: budget === null ? null : total - budget,
    makers,
    suppliers,
    left: { tasks: answer.plan.unplaced.length, materials: purchase.unoffered.length },
  };
};

export const answerBudget = ({ plan }: Asked): Answer => {
  const data = budgetAtCompletion(plan);
  const money = moneyOf(plan);
  const { trade } = words(plan.staging.production.words);
  const name = new Map(plan.staging.makers.map((maker) => [maker.code, maker.name]));
  const { left } = data;
  return {
    says: [
      `${money(data.total)} at completion: ${trade.labour} ${money(data.labour)}, materials ${money(data.materials)}, bought or ${trade.hired} garments ${money(data.garments)}.`,
      data.over === null
        ? "No budget is set (production.csv), so there is nothing to be over."
        : data.over > 0
          ? `Over the budget of ${money(data.budget!)} by ${money(data.over)}.`
          : `Within the budget of ${money(data.budget!)}, with ${money(-data.over)} left.`,
      ...(left.tasks > 0
        ? [`Not in it: ${counted(left.tasks, "task or fitting", "tasks and fittings")} without a place in the plan.`]
        : []),
      ...(left.materials > 0 ? [`Not in it: ${counted(left.materials, "material")} that nobody offers.`] : []),
    ],
    tables: [
      {
        title: `By maker: ${trade.labour}`,
        headings: ["maker", "hours", "overtime", "cost"],
        rows: data.makers.map((one) => [
          name.get(one.maker) ?? one.maker,
          showHours(one.minutes),
          showHours(one.overtime),
          money(one.cost),
        ]),
      },
      {
        title: "Materials by supplier",
        headings: ["supplier", "lines", "cost"],
        rows: data.suppliers.map(({ supplier, lines, cost }) => [supplier, String(lines), money(cost)]),
      },
    ],
    reasons: [
      "On estimates: likely hours as the plan places them. Clock hours worked and fitted count at each maker's rate, overtime at its own; hours paid " +
        "but idle, or kept for the repertoire, do not.",
      "Materials are whole packs of the purchase list; what lies on the shelf costs nothing here. Nothing worked or spent so far is known to it.",
    ],
    data,
  };
};
