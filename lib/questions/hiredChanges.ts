import { openTasks } from "#lib/approvals/otherWork";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { words } from "#lib/words/words";
import type { Answer, Asked } from "./answer";
import { counted, listed } from "./told";

/** Something that is done to a hired garment. */
export interface HiredChange {
  readonly garment: string;
  readonly what: string;
  /** By its construction, which lists for hired pieces only what is undone again; or asked for besides. */
  readonly from: "construction" | "asked for";
  readonly reversible: boolean;
}

/** By hand and undone by hand; what is cut, dyed or sewn by machine is not. Common practice, no source. */
const UNDONE_AGAIN: readonly string[] = ["hand", "fit", "millinery"];

/** Everything that is done to hired garments, what cannot be undone first. */
export const hiredChanges = ({ staging, garments, works }: StagingPlan): readonly HiredChange[] => {
  const hired = new Set(garments.filter(({ source }) => source === "hire").map(({ number }) => number));
  const { words: usage } = staging.production;
  const listedWork = works
    .filter(({ garment }) => hired.has(garment))
    .flatMap(({ garment, operations }) =>
      operations.map(
        (operation): HiredChange => ({
          garment,
          what: operation.name[usage],
          from: "construction",
          reversible: UNDONE_AGAIN.includes(operation.skill),
        }),
      ),
    );
  const asked = openTasks(staging.otherWork).flatMap(({ garment, title, skill }): HiredChange[] =>
    garment !== null && hired.has(garment) ? [{ garment, what: title, from: "asked for", reversible: UNDONE_AGAIN.includes(skill) }] : [],
  );
  return [...listedWork, ...asked].sort((a, b) => Number(a.reversible) - Number(b.reversible));
};

export const answerHiredChanges = ({ plan }: Asked): Answer => {
  const data = hiredChanges(plan);
  const { trade } = words(plan.staging.production.words);
  const hired = plan.garments.filter(({ source }) => source === "hire").length;
  const bad = [...new Set(data.filter(({ reversible }) => !reversible).map(({ garment }) => garment))];
  return {
    says: [
      hired === 0
        ? `Nothing is ${trade.hired}.`
        : bad.length === 0
          ? `None of ${counted(hired, `${trade.hired} garment`)}: what is done to them is undone again.`
          : `${listed(bad)}: ask the owner before anything is cut, dyed or let out.`,
    ],
    tables: [
      {
        title: `What is done to ${trade.hired} garments`,
        headings: ["garment", "what", "from", "undone again"],
        rows: data.map(({ garment, what, from, reversible }) => [garment, what, from, reversible ? "yes" : "no"]),
      },
    ].filter(({ rows }) => rows.length > 0),
    reasons: [
      "What is sewn by hand, fitted or put on a headpiece is undone again; what is cut, dyed or sewn by machine is not (common practice, no source).",
      "A piece goes back exactly as it came: write down and photograph how that was.",
    ],
    data,
  };
};
