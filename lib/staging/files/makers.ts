import * as z from "zod";
import { SKILLS, type Skill } from "#lib/labour/skills";
import type { PerMille } from "#lib/units/quantities";
import { type Cell, emptyMeans, orNull } from "../cells/cell";
import { hours, money, share } from "../cells/numbers";
import { pairs } from "../cells/pairs";
import { day, weekHours } from "../cells/times";
import { codeText, oneOf, someText } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

const pace = (): Cell<PerMille> => share(2000);

export const makers = stagingFile({
  name: "makers.csv",
  about: "People who work.",
  key: ["code"],
  schema: ({ currency }) =>
    z.object({
      code: column(codeText(), { meaning: "Short name, used by absences", example: "orla" }),
      name: column(someText(), { meaning: "Name on screens and lists", example: "Orla Venn" }),
      trade: column(someText(), { meaning: "As the trade says it", example: "tutu maker" }),
      employment: column(oneOf(["staff", "casual", "outworker"]), { meaning: "staff, casual (overhire) or outworker", example: "staff" }),
      skills: column(pairs<Skill, PerMille>(oneOf(SKILLS), pace()), {
        meaning: `Skills with the pace of each (${SKILLS.join(", ")}): 100% does a task in its standard minutes, 50% takes twice as long`,
        unit: "per cent",
        example: "net=100%; hand=80%",
        empty: "none",
      }),
      hours: column(weekHours(), {
        meaning: "Working hours of a week, breaks left out",
        unit: "clock",
        example: "Mon-Fri 09:00-13:00 14:00-18:00",
        empty: "none",
      }),
      overtime: column(weekHours(), {
        meaning: "Further hours that may be asked for",
        unit: "clock",
        example: "Mon-Thu 18:30-20:30",
        empty: "none",
      }),
      productive: column(emptyMeans(share(1000), 1000), {
        meaning: "Part of the hours that goes into tasks; the rest goes to questions and tidying. Fittings are planned apart",
        unit: "per cent",
        example: "85%",
        empty: "100%",
      }),
      reservedMinutesPerWeek: column(emptyMeans(hours(), 0), {
        meaning: "Kept back each week for repairs of the repertoire",
        unit: "hours and minutes",
        example: "4 h",
        empty: "none",
      }),
      paceFrom: column(pairs(day(), pace()), {
        meaning: "From which day which pace applies to all skills (a newcomer's first weeks)",
        unit: "day, per cent",
        example: "2027-01-11=50%; 2027-01-18=100%",
        empty: "as in skills",
      }),
      costPerHour: column(emptyMeans(money(currency), 0), { meaning: "Cost of an hour", unit: "money", example: "19.50", empty: "0" }),
      overtimeCostPerHour: column(orNull(money(currency)), {
        meaning: "Cost of an hour of overtime",
        unit: "money",
        example: "29.25",
        empty: "half as much again as an hour (common practice; check your own agreement)",
      }),
      starts: column(orNull(day()), { meaning: "First day at work", unit: "day", example: "2027-01-11", empty: "already here" }),
      ends: column(orNull(day()), { meaning: "Last day at work", unit: "day", example: "2027-03-12", empty: "stays" }),
    }),
});
