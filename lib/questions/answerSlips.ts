import { showWall } from "#lib/calendar/showDay";
import { showHours } from "#lib/units/hours";
import type { Answer, Asked } from "./answer";
import type { Options } from "./options";
import { type Slip, slips } from "./slips";
import { counted, listed } from "./told";

const WORDS: Readonly<Record<Slip["effect"], string>> = {
  moves: "moves it",
  "not looked at": "not looked at",
  "by re-planning": "only another plan absorbs it",
  absorbed: "absorbed",
};
/** So many pressing garments are enough for one answer. */
const TRIES = 6;

const ORDER: readonly Slip["effect"][] = ["moves", "by re-planning", "not looked at", "absorbed"];

export const answerSlips = (asked: Asked, options: Options): Answer => {
  const { plan } = asked;
  const days = options.whole("days") ?? 1;
  const tries = options.whole("tries") ?? TRIES;
  const data = [...slips(plan, asked, days, tries)].sort((a, b) => ORDER.indexOf(a.effect) - ORDER.indexOf(b.effect));
  const name = new Map(plan.garments.map((garment) => [garment.number, garment.name]));
  const named = (effect: Slip["effect"]) => data.filter((one) => one.effect === effect).map(({ garment }) => garment);
  const [moving, unlooked, replanned] = [named("moves"), named("not looked at"), named("by re-planning")];
  const before = plan.summary.lateGarments;
  const by = counted(days, "working day");
  return {
    says: [
      moving.length === 0
        ? `None${unlooked.length > 0 ? " of those looked at" : ""}: each may slip by ${by}.`
        : `If it slips by ${by}, the date moves: ${listed(moving, 12)}.`,
      ...(replanned.length > 0 ? [`Only with a new plan may these slip: ${listed(replanned, 12)}.`] : []),
      ...(unlooked.length > 0 ? [`Not looked at, being further from their dates: ${listed(unlooked, 12)}.`] : []),
      ...(before > 0
        ? [`${counted(before, "garment is", "garments are")} late in the plan already; moving the date means making it worse.`]
        : []),
    ],
    tables: [
      {
        title: `Each garment slipped by ${by}`,
        headings: ["garment", "name", "finished in the plan", "due", "then", "late then"],
        rows: data.map((one) => [
          one.garment,
          name.get(one.garment) ?? "",
          one.finish === null ? "no place" : showWall(one.finish),
          showWall(one.due),
          `${WORDS[one.effect]}${one.proved ? " (proved)" : ""}`,
          listed(
            one.late.map(({ garment, minutes }) => `${garment} ${showHours(minutes)}`),
            3,
          ),
        ]),
      },
    ],
    reasons: [
      "By re-planning: all tasks and fittings of the garment still to be done begin at least so many working days later than the plan has them (a batch " +
        "slips as one); everything else stays where it is if it can.",
      `Where that makes more late, the production is levelled again in ${counted(plan.answer.rounds, "round")}: "moves it" means that no plan without it was ` +
        "found then; (proved) that there is none, and only one round was searched to see how late it gets. " +
        `Those nearest their dates are looked at first, until ${counted(tries, "garment needs", "garments need")} that (--tries).`,
      "Late then is by the clock, nights and closed days counted.",
    ],
    data,
  };
};
