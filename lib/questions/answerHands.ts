import { showWall } from "#lib/calendar/showDay";
import type { Skill } from "#lib/labour/skills";
import { showHours } from "#lib/units/hours";
import { currencyDigits } from "#lib/units/money";
import { OVERTIME_A_DAY } from "#lib/whatif/remedies/remedy";
import { compareFigures } from "#lib/whatif/remedies/tryRemedy";
import type { RemedyAnswer } from "#lib/whatif/remedies/whatHelps";
import { mostMade } from "./addCostumes";
import type { Answer, Asked } from "./answer";
import { compareHands, type HandsAsked, sentOut } from "./hands";
import type { Options } from "./options";
import { counted, moneyOf } from "./told";

/** As the question says it. */
const USUAL = { skill: "hand", people: 2, weeks: 3, garments: 8, days: 21 } as const;
const WORKING_DAYS = 5;

export const answerHands = async (asked: Asked, options: Options): Promise<Answer> => {
  const { plan, today } = asked;
  const { staging } = plan;
  const piece = options.text("piece") ?? mostMade(staging);
  if (piece === null) return { says: ["The workroom makes nothing yet."], tables: [], reasons: [], data: null };
  const skill = (options.text("skill") ?? USUAL.skill) as Skill;
  const weeks = options.whole("weeks") ?? USUAL.weeks;
  const days = weeks * WORKING_DAYS;
  const units = options.whole("price");
  const price = units === null ? null : units * 10 ** currencyDigits(staging.production.currency);
  const out = sentOut(plan, piece, options.whole("garments") ?? USUAL.garments, price);
  const given: HandsAsked = {
    hands: { kind: "maker", skill, count: options.whole("people") ?? USUAL.people, days, from: today },
    overtime: { kind: "overtime", of: { skill }, minutes: days * OVERTIME_A_DAY, from: today },
    out: { kind: "outwork", ...out, days: options.whole("days") ?? USUAL.days },
    priceIsOurs: price === null,
  };
  const data = await compareHands(asked, given);
  const money = moneyOf(plan);
  const { unchanged, answers } = data;
  const change = (cost: number) =>
    cost < unchanged.cost ? `${money(unchanged.cost - cost)} less` : `${money(cost - unchanged.cost)} more`;
  const row = ({ asks, tried, refused }: RemedyAnswer) =>
    tried === null
      ? [asks, refused ?? "", "", "", "", ""]
      : [
          asks,
          showWall(tried.figures.finish),
          String(tried.figures.lateGarments),
          showHours(tried.figures.overtimeMinutes),
          money(tried.figures.cost),
          change(tried.figures.cost),
        ];
  const [best] = answers
    .filter(({ tried }) => tried !== null)
    .sort((a, b) => compareFigures(a.tried!.figures, b.tried!.figures) || a.tried!.figures.finish - b.tried!.figures.finish);
  return {
    says: [
      `As it stands everything is done by ${showWall(unchanged.finish)}, with ${counted(unchanged.lateGarments, "garment")} late, for ${money(unchanged.cost)}.`,
      ...answers.map(({ asks, tried, refused }) =>
        tried === null
          ? `${asks}: ${refused}`
          : `${asks}: done by ${showWall(tried.figures.finish)}, ${tried.figures.lateGarments} late, ${change(tried.figures.cost)}.`,
      ),
      ...(best ? [`Least late, then least overtime, then cheapest: ${best.asks}.`] : []),
    ],
    tables: [
      {
        title: "Each as a plan of its own",
        headings: ["remedy", "all done", "late", "overtime", "cost", "change"],
        rows: [
          [
            "Nothing changed",
            showWall(unchanged.finish),
            String(unchanged.lateGarments),
            showHours(unchanged.overtimeMinutes),
            money(unchanged.cost),
            "",
          ],
          ...answers.map(row),
        ],
      },
    ],
    reasons: [
      "Each plan begins from the plan as it stands and is searched for as long, and so is the one with nothing changed.",
      "More hands are paid for all their hours, at the rate of the cheapest of those best at it; overtime is two hours an evening at most, and only what is worked is paid.",
      `Whoever makes garments out of the house does all but patterns and fittings${given.priceIsOurs ? "; with no price given it is taken to cost what the same work costs here (--price)" : ""}.`,
    ],
    data,
  };
};
