import { describe, expect, it } from "vitest";
import type { OtherTask } from "#lib/approvals/otherWork";
import type { PlainDate } from "#lib/calendar/plainDate";
import { notesUndone } from "#lib/questions/notesUndone";
import { ask, askable, only } from "./asked";

const note = (code: string, minutes: number, priority: number, changes: Partial<OtherTask> = {}): OtherTask => ({
  code,
  origin: "parade note",
  title: `Mend ${code}`,
  garment: "WL 001",
  set: null,
  material: null,
  gates: null,
  skill: "hand",
  minutes: [minutes, minutes, minutes],
  machine: null,
  priority,
  due: "dress",
  waitsFor: null,
  shownFor: null,
  askedBy: "designer",
  askedOn: "2027-02-26" as PlainDate,
  doneOn: null,
  ...changes,
});
const noted = async (...otherWork: readonly OtherTask[]) => askable({ ...(await only("wind-unitard")), otherWork }, 0);

/** Five notes, one of them done and one no parade note: 40 min of the first priority, 60 + 25 of the second. */
const NOTES = [
  note("n-1", 60, 2),
  note("n-2", 40, 1),
  note("n-3", 25, 2),
  note("n-4", 90, 1, { doneOn: "2027-02-26" as PlainDate }),
  note("s-1", 30, 1, { origin: "by hand" }),
];

describe("24. Which notes from parade are undone, by priority and hours?", () => {
  it("three: 40 min of the first priority, 1 h 25 of the second", async () => {
    const asked = await noted(...NOTES);
    const undone = notesUndone(asked.plan);
    expect(undone.map(({ task }) => task.priority)).toEqual([1, 2, 2]);
    expect(new Set(undone.map(({ task }) => task.code))).toEqual(new Set(["n-1", "n-2", "n-3"]));
    expect((await ask(24, asked)).says[0]).toBe("3 notes of 4, 2 h 05 of work: priority 1 one note, 40 min; priority 2 2 notes, 1 h 25.");
  });

  /** Asked for on Fri 26 Feb, the whole workroom but Ilka works again on Mon 1 Mar; the dress rehearsal is Wed 3 Mar 14:00. */
  it("each has somebody and a time after it was asked for, before the dress rehearsal", async () => {
    for (const { maker, start, missed } of notesUndone((await noted(...NOTES)).plan)) {
      expect(maker).not.toBeNull();
      expect(start).toBeGreaterThanOrEqual(Date.UTC(2027, 1, 26) / 60_000);
      expect(missed).toBe(false);
    }
  });

  it("one that was due before it was asked for is not in time", async () => {
    const asked = await noted(note("n-1", 60, 1, { due: "parade" }));
    expect(notesUndone(asked.plan).map(({ missed }) => missed)).toEqual([true]);
    expect((await ask(24, asked)).says[1]).toBe("Not in time in the plan: n-1.");
  });

  it("none once all are done, and none where none is known", async () => {
    expect((await ask(24, await noted(NOTES[3]!))).says).toEqual(["None: one note is known from the parade, and done."]);
    expect((await ask(24, await noted())).says).toEqual(["None: no notes from a parade are known (other_work.csv)."]);
  });
});
