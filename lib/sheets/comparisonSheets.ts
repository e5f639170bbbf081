import type { StagingPlan } from "#lib/planning/stagingPlan";
import { writeMoney } from "#lib/units/money";
import type { GarmentChange, PlanComparison } from "#lib/whatif/comparePlans";
import { listCell, timeCell } from "./cells";
import { materialCells } from "./changeCells";
import type { Sheet } from "./sheet";

/** Everything that changes from one plan to another, as tables: garments, materials, fittings, money. Their rows that stay the same are left out. */
export const comparisonSheets = (compared: PlanComparison, after: StagingPlan): readonly Sheet[] => [
  garmentsSheet(compared),
  materialsSheet(compared, after),
  fittingsSheet(compared, after),
  moneySheet(compared, after),
];

const garmentsSheet = ({ garments }: PlanComparison): Sheet => ({
  name: "garments",
  title: "Garments that change",
  headings: [
    "number_before",
    "number_after",
    "name",
    "wearers_before",
    "wearers_after",
    "work_min_before",
    "work_min_after",
    "fitting_min_before",
    "fitting_min_after",
    "finish_before",
    "finish_after",
  ],
  rows: garments.filter(({ changed }) => changed).map(garmentCells),
});

const garmentCells = ({ name, before, after }: GarmentChange): readonly string[] => [
  before?.number ?? "",
  after?.number ?? "",
  name,
  listCell(before?.wearers ?? []),
  listCell(after?.wearers ?? []),
  String(before?.minutes ?? 0),
  String(after?.minutes ?? 0),
  String(before?.fittingMinutes ?? 0),
  String(after?.fittingMinutes ?? 0),
  timeCell(before?.finish ?? null),
  timeCell(after?.finish ?? null),
];

const materialsSheet = ({ materials }: PlanComparison, { staging }: StagingPlan): Sheet => ({
  name: "materials",
  title: "Materials that change",
  headings: ["material", "name", "before", "after", "change"],
  rows: materials.filter(({ before, after }) => before !== after).map((change) => materialCells(change, staging)),
});

const fittingsSheet = ({ fittings }: PlanComparison, { staging }: StagingPlan): Sheet => {
  const nameOf = (code: string | null) => staging.performers.find((performer) => performer.code === code)?.name ?? code ?? "";
  return {
    name: "fittings",
    title: "Fittings that change",
    headings: ["change", "garment", "fitting", "place", "performer_before", "performer_after", "min_before", "min_after"],
    rows: fittings
      .filter(({ change }) => change !== "kept")
      .map((one) => [
        one.change,
        one.garment,
        one.name,
        one.place,
        nameOf(one.before),
        nameOf(one.after),
        String(one.minutesBefore),
        String(one.minutesAfter),
      ]),
  };
};

const moneySheet = ({ money }: PlanComparison, { staging }: StagingPlan): Sheet => {
  const { currency } = staging.production;
  return {
    name: "money",
    title: "Money that changes",
    headings: ["kind", "about", `before_${currency}`, `after_${currency}`, `change_${currency}`],
    rows: money
      .filter(({ before, after }) => before !== after)
      .map(({ kind, about, before, after }) => [kind, about, ...[before, after, after - before].map((amount) => signed(amount, currency))]),
  };
};

const signed = (amount: number, currency: string) => `${amount < 0 ? "-" : ""}${writeMoney(Math.abs(amount), currency)}`;
