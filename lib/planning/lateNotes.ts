import { showWall } from "#lib/calendar/showDay";
import type { LevellingAnswer } from "#lib/levelling/problem";
import type { PurchaseList } from "#lib/purchasing/purchase";
import { toWall } from "./axis";
import { lateText } from "./lateText";
import { namesOf } from "./names";
import type { Prepared } from "./prepared";
import type { GarmentState, PlanNote } from "./stagingPlan";
import type { Lateness } from "./why";

/** What the plan makes known: late garments with their causes, work without a place, orders that come too late. */
export const lateNotes = (
  prepared: Prepared,
  answer: LevellingAnswer,
  states: readonly GarmentState[],
  late: ReadonlyMap<string, Lateness>,
  purchase: PurchaseList,
): PlanNote[] => [
  ...lateGarments(states, late),
  ...lateOthers(prepared, answer),
  ...unplaced(prepared, answer),
  ...orders(purchase, prepared.today),
];

const lateGarments = (states: readonly GarmentState[], late: ReadonlyMap<string, Lateness>): PlanNote[] =>
  states
    .filter(({ minutesLate }) => minutesLate > 0)
    .map((state) => ({
      kind: "late",
      about: state.garment,
      text: `${lateText(state)}. ${state.why.join(" ")}`.trim(),
      mend: late.get(state.garment)?.reasons[0]?.mend ?? "",
    }));

const lateOthers = ({ staging, problem, nodes, axis }: Prepared, { plan }: LevellingAnswer): PlanNote[] =>
  problem.dues.flatMap(({ node, at }): PlanNote[] => {
    const what = nodes[node]!;
    const placed = plan.placed[node];
    if (what.kind !== "other" || !placed || placed.end <= at) return [];
    const { title, garment } = staging.otherWork.find(({ code }) => code === what.task)!;
    const text = `${title}: due ${showWall(toWall(axis, at))}, done ${showWall(toWall(axis, placed.end))}.`;
    return [{ kind: "late", about: garment ?? what.task, text, mend: "Give it more priority, or drop it." }];
  });

const MEND = {
  "no one has the skill": "Give a maker the skill in makers.csv, or send the work out.",
  "no time left in the calendars": "Find more hours, or cut work.",
  "performer never free": "Add time for fittings to calls.csv.",
  "no room": "Add a fitting room to machines.csv.",
  "waits for an unplaced one": "Mend what it waits for.",
  "machine missing": "Add the machine to machines.csv.",
  "not in the kept plan": "Level again: the production has changed since.",
} as const;

const unplaced = (prepared: Prepared, { plan }: LevellingAnswer): PlanNote[] => {
  const names = namesOf(prepared);
  return plan.unplaced.map(({ node, reason, detail }) => ({
    kind: "unplaced",
    about: names.node(node),
    text: `Not placed: ${reason}${detail === "" ? "" : ` (${detail})`}.`,
    mend: MEND[reason],
  }));
};

const orders = ({ lines }: PurchaseList, today: string): PlanNote[] =>
  lines.flatMap(({ material, name, supplier, orderBy, warnings }): PlanNote[] => [
    ...(orderBy !== null && orderBy < today
      ? [
          {
            kind: "purchase",
            about: material,
            text: `${name} from ${supplier} ought to have been ordered by ${orderBy}.`,
            mend: "Ask for a quicker delivery.",
          } as const,
        ]
      : []),
    ...warnings.map((text) => ({ kind: "purchase", about: material, text, mend: "" }) as const),
  ]);
