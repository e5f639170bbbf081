import { minutesByPriority, type Undone, undoneNotes } from "#lib/approvals/undoneNotes";
import { showWall } from "#lib/calendar/showDay";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { showHours } from "#lib/units/hours";
import { words } from "#lib/words/words";
import type { Answer, Asked } from "./answer";
import { milestoneWall } from "./dates";
import { counted, sum } from "./told";

export interface NoteUndone extends Undone {
  /** The plan has no place for it, or ends it after its milestone. */
  readonly missed: boolean;
}

/** Notes from the dress parade that are not done, the first priority first, and whether the plan has them done in time. */
export const notesUndone = (plan: StagingPlan): readonly NoteUndone[] =>
  undoneNotes(plan).map((note) => {
    const due = plan.staging.milestones.find(({ code }) => code === note.task.due);
    return { ...note, missed: note.end === null || (due !== undefined && note.end > milestoneWall(due)) };
  });

export const answerNotesUndone = ({ plan }: Asked): Answer => {
  const data = notesUndone(plan);
  const { staging } = plan;
  const { skills } = words(staging.production.words);
  const asked = staging.otherWork.filter(({ origin }) => origin === "parade note").length;
  const maker = new Map(staging.makers.map(({ code, name }) => [code, name]));
  const milestone = new Map(staging.milestones.map(({ code, name }) => [code, name]));
  const missed = data.filter((note) => note.missed);
  const priorities = minutesByPriority(data);
  return {
    says:
      data.length === 0
        ? [
            asked === 0
              ? "None: no notes from a parade are known (other_work.csv)."
              : `None: ${counted(asked, "note is", "notes are")} known from the parade, and done.`,
          ]
        : [
            `${counted(data.length, "note")} of ${asked}, ${showHours(sum(data.map(({ task }) => task.minutes[1])))} of work: ` +
              `${priorities.map(({ priority, notes, minutes }) => `priority ${priority} ${counted(notes, "note")}, ${showHours(minutes)}`).join("; ")}.`,
            missed.length === 0
              ? "In the plan each has a time, none after its milestone."
              : `Not in time in the plan: ${missed.map(({ task }) => task.code).join(", ")}.`,
          ],
    tables:
      data.length === 0
        ? []
        : [
            {
              title: "Undone, by priority",
              headings: ["priority", "note", "what", "garment", "skill", "time", "asked by", "due", "who", "done by"],
              rows: data.map(({ task, maker: who, end, missed: late }) => [
                String(task.priority),
                task.code,
                task.title,
                task.garment ?? "",
                skills[task.skill],
                showHours(task.minutes[1]),
                task.askedBy,
                milestone.get(task.due ?? "") ?? "",
                who === null ? "nobody" : (maker.get(who) ?? who),
                end === null ? "no place" : `${showWall(end)}${late ? " (late)" : ""}`,
              ]),
            },
          ],
    reasons: [
      "Read from other_work.csv: parade notes with no day on which they were done. Hours are the likely ones; who and when are the plan's.",
    ],
    data,
  };
};
