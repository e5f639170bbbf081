import { MINUTES_PER_DAY } from "#lib/calendar/plainDate";
import { showWall } from "#lib/calendar/showDay";
import { lateText } from "#lib/planning/lateText";
import type { Milestone } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { words } from "#lib/words/words";
import { mostMade } from "./addCostumes";
import type { Answer, Asked } from "./answer";
import { milestoneWall } from "./dates";
import { type MoreCostumes, moreCostumes } from "./moreCostumes";
import type { Options } from "./options";
import { counted, listed, moneyOf, sum } from "./told";

const SIX = 6;

export const answerMoreCostumes = async (asked: Asked, options: Options): Promise<Answer> => {
  const { plan } = asked;
  const { staging } = plan;
  const like = options.text("like") ?? mostMade(staging);
  if (like === null)
    return { says: ["The workroom makes nothing yet: there is no piece to add more of."], tables: [], reasons: [], data: null };
  const data = await moreCostumes(asked, { like, count: options.whole("count") ?? SIX, due: options.text("due") });
  const money = moneyOf(plan);
  const { skills, trade } = words(staging.production.words);
  const piece = staging.pieces.find(({ code }) => code === like)!;
  return {
    says: [...verdict(data, staging.milestones), ...gives(data, staging.milestones)],
    tables: [
      {
        title: "Hours more, against all that is needed and left",
        headings: ["skill", "more", "needed in all", "left if those who have it did nothing else"],
        rows: data.skills.map(({ skill, more, needed, worth }) => [
          skills[skill],
          showHours(more),
          showHours(needed),
          `${showHours(worth)}${needed > worth ? " (too few)" : ""}`,
        ]),
      },
      {
        title: "Late with them",
        headings: ["garment", "name", "due", "finished", "late"],
        rows: data.late.map((state) => [
          state.garment,
          data.added.includes(state.garment)
            ? `Added: ${piece.name}`
            : (plan.garments.find(({ number }) => number === state.garment)?.name ?? ""),
          showWall(state.due),
          state.finish === null ? "" : showWall(state.finish),
          lateText(state),
        ]),
      },
    ].filter(({ rows }) => rows.length > 0),
    reasons: [
      `By re-planning: ${counted(data.addition.count, "costume")} of a design of their own, made like ${piece.name} (${like}), for those who wear that, ` +
        `due ${showWall(data.due)}, planned with everything else in as many rounds as the plan (${plan.answer.rounds}).`,
      `${money(data.labour)} more of ${trade.labour} and ${money(data.materials)} of materials. The new design takes its own pattern, and a prototype where the set it is like has one.`,
      data.fits
        ? "Nothing is later than without them, and nothing more is without a place."
        : "Fewer were tried one by one, each with a plan of its own; another search may find room for one more.",
    ],
    data: { ...data, late: data.late.map(({ garment, finish, minutesLate, daysLate }) => ({ garment, finish, minutesLate, daysLate })) },
  };
};

const verdict = (data: MoreCostumes, milestones: readonly Milestone[]): string[] => {
  const { count } = data.addition;
  const hours = showHours(sum(data.skills.map(({ more }) => more)));
  const over = data.overtime > 0 ? ` and ${showHours(data.overtime)} of overtime` : "";
  if (data.fits)
    return [
      `Yes: ${counted(count, "costume")} more fit in, for ${hours} more work${over}; the last of them is done ${shown(data.addedFinish)}.`,
    ];
  const worst = Math.max(0, ...data.late.map(({ daysLate }) => daysLate));
  const by = worst > 0 ? `, the worst by ${counted(worst, "working day")}` : "";
  return [
    `No, not all of them: ${counted(count, "costume")} more are ${hours} more work${over}, and ${counted(data.late.length, "garment is", "garments are")} late${by}` +
      `${data.before.late > 0 ? ` (${data.before.late} without them)` : ""}.`,
    data.proved
      ? "That is proved: no plan with these people and dates has everything in time."
      : "No plan in time was found; that there is none is not proved.",
    ...(data.unplaced > 0 ? [`${counted(data.unplaced, "task or fitting has", "tasks and fittings have")} no place at all.`] : []),
    `Everything is done by ${showWall(data.finish)}${later(data, milestones)}.`,
  ];
};

const shown = (wall: number | null) => (wall === null ? "never" : showWall(wall));

/** The milestone that all of it would be ready for. */
const later = ({ finish }: MoreCostumes, milestones: readonly Milestone[]): string => {
  const held = [...milestones].sort((a, b) => milestoneWall(a) - milestoneWall(b)).find((one) => milestoneWall(one) >= finish);
  if (held) return `, in time for ${held.name}`;
  const last = Math.max(...milestones.map(milestoneWall));
  return `, ${counted(Math.ceil((finish - last) / MINUTES_PER_DAY), "day")} after the last milestone`;
};

/** What would have to give. */
const gives = ({ fits, most, addition, skills, mends }: MoreCostumes, milestones: readonly Milestone[]): string[] => {
  if (fits) return [];
  const due = milestones.find(({ code }) => code === addition.due);
  const short = skills
    .filter(({ needed, worth }) => needed > worth)
    .map(({ skill, needed, worth }) => `${skill} ${showHours(needed - worth)}`);
  return [
    `What would have to give: ${most === 0 ? "not one of them fits" : `${counted(most, "one", "of them").replace("one one", "one of them")} ${most === 1 ? "fits" : "fit"}`} with nothing later than now; or the date${due ? ` (${due.name})` : ""}; or hours from elsewhere` +
      `${short.length > 0 ? `, at least ${listed(short)}` : ""}.`,
    ...mends.slice(0, 3).map((mend) => `Or: ${mend.charAt(0).toLowerCase()}${mend.slice(1)}`),
  ];
};
