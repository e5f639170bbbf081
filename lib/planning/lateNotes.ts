import { group } from "d3-array";
import { showWall } from "#lib/calendar/showDay";
import type { LevellingAnswer, Unplaced } from "#lib/levelling/problem";
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

const NEW = "not in the kept plan";

const MEND = {
  "no one has the skill": "Give a maker the skill, or send the work out.",
  "no time left in the calendars": "Find more hours, or cut work.",
  "performer never free": "Find time for fittings among the performer's calls.",
  "no room": "Add a fitting room to the machines.",
  "waits for an unplaced one": "Mend what it waits for.",
  "machine missing": "Add the machine to those of the workroom.",
  [NEW]: "Level again: the production has changed since.",
} as const;

/** One note for each; what came in since the plan was kept is told once for each garment, since levelling again mends it all. */
const unplaced = (prepared: Prepared, { plan }: LevellingAnswer): PlanNote[] => {
  const names = namesOf(prepared);
  const isNew = ({ reason }: Unplaced) => reason === NEW;
  const about = ({ node }: Unplaced): string => {
    const what = prepared.nodes[node]!;
    if ("garments" in what) return what.garments.join(", ");
    return "garment" in what && what.garment !== null ? what.garment : names.node(node);
  };
  const since = group(plan.unplaced.filter(isNew), about);
  return [
    ...plan.unplaced
      .filter((one) => !isNew(one))
      .map(({ node, reason, detail }) => ({
        kind: "unplaced" as const,
        about: names.node(node),
        text: `Not placed: ${reason}${detail === "" ? "" : ` (${detail})`}.`,
        mend: MEND[reason],
      })),
    ...[...since].map(([garment, nodes]) => ({
      kind: "unplaced" as const,
      about: garment,
      text: `${nodes.length === 1 ? "One piece of its work is" : `${nodes.length} pieces of its work are`} not in the kept plan.`,
      mend: MEND[NEW],
    })),
  ];
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
