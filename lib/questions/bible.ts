import { versionMeant } from "#lib/constructions/versions";
import { bodyOf } from "#lib/measurements/body";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Answer, Asked } from "./answer";
import { counted, listed } from "./told";

/** What a stranger would miss who had to make a garment again from what is written down. */
export interface Missing {
  readonly garment: string;
  readonly what: readonly string[];
}

export interface Bible {
  readonly garments: number;
  readonly missing: readonly Missing[];
  /** Each thing that is missing anywhere, with how many garments miss it, the most first. */
  readonly kinds: readonly (readonly [what: string, garments: number])[];
}

/** How it is made, from what, by whom it is sold, in which dye lot, for whose body, and who approved it. */
export const bible = ({ staging, garments, works }: StagingPlan): Bible => {
  const workOf = new Map(works.map((work) => [work.garment, work]));
  const offered = new Set(staging.offers.map(({ material }) => material));
  const onShelf = new Set(staging.lots.map(({ material }) => material));
  const lotted = new Set(staging.lots.filter(({ dyeLot }) => dyeLot !== null && dyeLot !== "").map(({ material }) => material));
  const made = garments.filter(({ source }) => source === "build" || source === "alter");
  const missing = made.flatMap((garment): Missing[] => {
    const what: string[] = [];
    const construction =
      garment.construction === null ? undefined : versionMeant(staging.constructions, garment.construction, garment.version);
    if (!construction) what.push("how it is made");
    else if (construction.source.trim() === "") what.push("where its figures come from");
    const needs = workOf.get(garment.number)?.needs ?? [];
    if (needs.some(({ material }) => !offered.has(material) && !onShelf.has(material))) what.push("who sells its materials");
    if (needs.some(({ material, oneLotSet }) => oneLotSet !== null && !lotted.has(material))) what.push("the dye lot");
    const wearer = garment.wearers[0];
    if (wearer && (wearer.performer === null || bodyOf(staging, wearer).sheet === null)) what.push("the body it was made for");
    const set = staging.sets.find(({ code }) => code === garment.set);
    if (set?.prototype && set.approvedOn === null) what.push("who approved its prototype, and when");
    return what.length === 0 ? [] : [{ garment: garment.number, what }];
  });
  const counts = new Map<string, number>();
  for (const { what } of missing) for (const one of what) counts.set(one, (counts.get(one) ?? 0) + 1);
  return { garments: made.length, missing, kinds: [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)) };
};

export const answerBible = ({ plan }: Asked): Answer => {
  const data = bible(plan);
  const whole = data.garments - data.missing.length;
  return {
    says: [
      data.missing.length === 0
        ? `Yes: all ${counted(data.garments, "garment")} can be made again from what is written down.`
        : `${whole === 0 ? "None" : counted(whole, "garment")} of ${data.garments} could be made again from what is written down.`,
      ...data.kinds.map(([what, garments]) => `Missing for ${counted(garments, "garment")}: ${what}.`),
    ],
    tables: [
      {
        title: "What a stranger would miss",
        headings: ["garment", "missing"],
        rows: data.missing.map(({ garment, what }) => [garment, listed(what)]),
      },
    ].filter(({ rows }) => rows.length > 0),
    reasons: [
      "Looked at: the construction and where its figures come from, a supplier or a lot of each material, the dye lot of a set that must match, the sheet of the body, the approval of a prototype.",
      "Photographs, swatches and what the dancers said of it are not looked at here.",
    ],
    data,
  };
};
