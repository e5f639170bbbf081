import { meant } from "#lib/exchange/nearest";
import { failed, ok, type Result } from "#lib/result";
import { both } from "#lib/words/bothWords";
import { answerGrowth } from "./answerGrowth";
import { answerHands } from "./answerHands";
import { answerInjury } from "./answerInjury";
import { answerLessDecoration } from "./answerLessDecoration";
import { answerMoreCostumes } from "./answerMoreCostumes";
import { answerQuickChanges } from "./answerQuickChanges";
import { answerRecast } from "./answerRecast";
import { answerSlips } from "./answerSlips";
import { answerWorkOfDay } from "./answerWorkOfDay";
import { answerBatchesInWeek } from "./batchesInWeek";
import { answerBible } from "./bible";
import { answerBudget } from "./budget";
import { answerFittingClashes } from "./fittingClashes";
import { answerFittingsWaiting } from "./fittingsWaiting";
import { answerGoodsWaiting } from "./goodsWaiting";
import { answerHiredChanges } from "./hiredChanges";
import { answerHoursLeft } from "./hoursLeft";
import { answerNetToBuy } from "./netToBuy";
import { answerNotesUndone } from "./notesUndone";
import { answerOldMeasurements } from "./oldMeasurements";
import { answerOpenTickets } from "./openTickets";
import type { Option } from "./options";
import type { Question } from "./question";
import { answerSharing } from "./sharing";

type Asks = Question["asks"];
const asked = (number: number, code: string, asks: Asks, answer: Question["answer"], options: readonly Option[] = []): Question => ({
  number,
  code,
  asks,
  options,
  answer,
});
const unanswered = (number: number, code: string, asks: Asks): Question => asked(number, code, asks, null);

const WEEK: Option = { name: "week", kind: "day", meaning: "any day of the week asked about (this week)" };

/** The twenty-five questions of a workroom, answered or not. */
export const QUESTIONS: readonly Question[] = [
  asked(
    1,
    "injury",
    both(
      "A principal is injured: which garments can the cover wear, with what alterations and hours, and do we still make dress?",
      "A principal is injured: which garments can the understudy wear, with what alterations and hours, and do we still make dress?",
    ),
    answerInjury,
    [
      { name: "performer", kind: "performer", meaning: "who is injured (the first principal)" },
      { name: "day", kind: "day", meaning: "from which day (the next Tuesday)" },
    ],
  ),
  asked(2, "recast", both("If casting of the corps changes today, how many fittings and hours does that add, and to whom?"), answerRecast, [
    { name: "role", kind: "role", meaning: "the role (the first of the corps)" },
    { name: "place", kind: "whole", meaning: "one place of it only (all, each by itself)" },
    { name: "performer", kind: "performer", meaning: "who comes in (somebody new)" },
    { name: "day", kind: "day", meaning: "the day it changes (today)" },
  ]),
  asked(3, "slip", both("Which garment, if it slips one day, moves dress?"), answerSlips, [
    { name: "days", kind: "whole", meaning: "working days it slips (1)" },
    { name: "tries", kind: "whole", meaning: "ends when so many garments have been found for which another plan is needed (6)" },
  ]),
  asked(
    4,
    "open-tickets",
    both("Which open tickets have no free person with the skill?", "Which open work orders have no free person with the skill?"),
    answerOpenTickets,
  ),
  asked(5, "hours-left", both("How many hours of a skill are left before parade, and how many are needed?"), answerHoursLeft, [
    { name: "skill", kind: "skill", meaning: "the skill (net, the tutu makers')" },
    { name: "before", kind: "milestone", meaning: "the milestone (the first dress parade)" },
  ]),
  asked(
    6,
    "fittings",
    both("What is waiting on a fitting, and which dancers are free this week inside their work span?"),
    answerFittingsWaiting,
    [WEEK],
  ),
  asked(7, "goods", both("What is waiting on cloth, dye or net, and by when was it promised?"), answerGoodsWaiting, [
    { name: "kind", kind: "material kind", meaning: "one kind of material only (all)" },
  ]),
  asked(
    8,
    "net",
    both(
      "How much net must I buy in one lot, by colour and width, with spares?",
      "How much net must I buy in one lot, by color and width, with spares?",
    ),
    answerNetToBuy,
  ),
  asked(
    9,
    "hands",
    both(
      "Two casual stitchers for three weeks, or overtime, or send eight bodices out: cost and finish date of each?",
      "Overhire two stitchers for three weeks, or overtime, or send eight bodices out: cost and finish date of each?",
    ),
    answerHands,
    [
      { name: "skill", kind: "skill", meaning: "the skill of the casuals and of the overtime (hand)" },
      { name: "people", kind: "whole", meaning: "how many casuals (2)" },
      { name: "weeks", kind: "whole", meaning: "for so many weeks (3)" },
      { name: "piece", kind: "piece", meaning: "what is sent out (the piece made most often)" },
      { name: "garments", kind: "whole", meaning: "how many of it at most (8)" },
      { name: "price", kind: "whole", meaning: "price of one in whole units of the currency (what it costs here)" },
      { name: "days", kind: "whole", meaning: "days by the calendar it is away (21)" },
    ],
  ),
  asked(10, "decoration", both("What does dropping the second decoration pass save?"), answerLessDecoration, [
    { name: "piece", kind: "piece", meaning: "one line of the piece list only (all)" },
    { name: "drop", kind: "text", meaning: "counts to drop, by comma (gluedStones,sewnStones,stones)" },
  ]),
  unanswered(11, "stock", both("Which stock pieces fit this dancer within the let-out available?")),
  asked(
    12,
    "hired",
    both("Which hired pieces have irreversible alterations?", "Which rented pieces have irreversible alterations?"),
    answerHiredChanges,
  ),
  asked(13, "share", both("Can two casts share this set on a two-show day, dry and legally?"), answerSharing, [
    { name: "piece", kind: "piece", meaning: "one piece only (everything that is shared)" },
    { name: "gap", kind: "whole", meaning: "minutes between the shows (as the calls say, else 150)" },
  ]),
  asked(14, "measurements", both("Whose measurements are older than the allowed age?"), answerOldMeasurements, [
    { name: "days", kind: "whole", meaning: "allowed age in days (182)" },
    { name: "minor-days", kind: "whole", meaning: "the same for minors (91)" },
  ]),
  asked(15, "growth", both("Which student will outgrow what before opening?"), answerGrowth, [
    { name: "before", kind: "milestone", meaning: "another milestone (the opening)" },
  ]),
  asked(16, "clashes", both("Which fittings clash with class, rehearsal, rest or the one fitting room?"), answerFittingClashes),
  asked(17, "today", both("What should each person work on today, and what next if that stalls?"), answerWorkOfDay, [
    { name: "day", kind: "day", meaning: "another day (today)" },
  ]),
  asked(18, "batches", both("What can be batched this week across designs?"), answerBatchesInWeek, [WEEK]),
  asked(
    19,
    "budget",
    both("Are we over budget at completion, by labour and by material?", "Are we over budget at completion, by labor and by material?"),
    answerBudget,
  ),
  asked(20, "quick-changes", both("Which quick changes exceed the time in the score, and how many dressers solve it?"), answerQuickChanges),
  unanswered(21, "laundry", both("What must be washed, dried and mended before the half, and is capacity enough?")),
  unanswered(22, "wear", both("Which pieces are worn past their replace point before the tour ends?")),
  asked(23, "more-costumes", both("If the designer adds six costumes now, what is the honest answer?"), answerMoreCostumes, [
    { name: "like", kind: "piece", meaning: "the piece they are like (the one made most often)" },
    { name: "count", kind: "whole", meaning: "how many (6)" },
    { name: "due", kind: "milestone", meaning: "the milestone they are for (that of the piece)" },
  ]),
  asked(24, "notes", both("Which notes from parade are undone, by priority and hours?"), answerNotesUndone),
  asked(25, "bible", both("In ten years, could a stranger remake this from our bible?"), answerBible),
];

/** The question of a code or a number; else a sentence that says what there is. */
export const questionMeant = (written: string): Result<Question, string> => {
  const found = QUESTIONS.find(({ code, number }) => code === written || String(number) === written);
  if (found) return ok(found);
  const codes = QUESTIONS.map(({ code }) => code);
  return failed(`There is no question "${written}". ${meant(written, codes, "Ask without one to see them all.")}`);
};
