import { openTasks } from "#lib/approvals/otherWork";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { listCell, timeCell } from "./cells";
import type { Sheet } from "./sheet";

/** Every garment as construction tasks with their standard minutes, before batches, pace and calendars; then other work still to do. */
export const tasksSheet = ({ works, garments, staging, tasks }: StagingPlan): Sheet => {
  const words = staging.production.words;
  const nameOf = new Map(garments.map(({ number, name }) => [number, name]));
  const batchOf = new Map(tasks.flatMap(({ key, garments: members, operation }) => members.map((one) => [`${one}/${operation}`, key])));
  return {
    name: "tasks",
    title: "Construction tasks",
    headings: [
      "garment",
      "name",
      "operation",
      "task",
      "skill",
      "machine",
      "low_min",
      "likely_min",
      "high_min",
      "waits_for",
      "planned_as",
      "arithmetic",
    ],
    rows: [
      ...works.flatMap(({ garment, operations }) =>
        operations.map(({ code, name, skill, machine, minutes, waitsFor, arithmetic }) => [
          garment,
          nameOf.get(garment) ?? "",
          code,
          name[words],
          skill,
          machine ?? "",
          ...minutes.map(String),
          listCell(waitsFor.map(({ on, lagMinutes }) => (lagMinutes > 0 ? `${on} + ${lagMinutes} min` : on))),
          batchOf.get(`${garment}/${code}`) ?? "",
          arithmetic,
        ]),
      ),
      ...openTasks(staging.otherWork).map(({ code, origin, title, garment, set, material, skill, machine, minutes, waitsFor, askedBy }) => [
        garment ?? set ?? material ?? "",
        nameOf.get(garment ?? "") ?? "",
        code,
        title,
        skill,
        machine ?? "",
        ...minutes.map(String),
        waitsFor === null ? "" : `approval of ${waitsFor}`,
        `other/${code}`,
        askedBy === "" ? origin : `${origin}, asked by ${askedBy}`,
      ]),
    ],
  };
};

/** Who does what and when, by start. */
export const planSheet = ({ tasks }: StagingPlan): Sheet => ({
  name: "plan",
  title: "Plan of the workroom",
  headings: ["start", "end", "maker", "task", "operation", "garments", "skill", "machine", "standard_min", "overtime_min"],
  rows: [...tasks]
    .sort((a, b) => (a.start ?? Number.POSITIVE_INFINITY) - (b.start ?? Number.POSITIVE_INFINITY) || a.node - b.node)
    .map(({ key, garments, name, skill, machine, minutes, maker, start, end, overtimeMinutes }) => [
      timeCell(start),
      timeCell(end),
      maker ?? "",
      key,
      name,
      listCell(garments),
      skill,
      machine ?? "",
      String(minutes),
      String(overtimeMinutes),
    ]),
});

/** Productive minutes planned and free, by skill and by maker, week by week. */
export const loadSheet = ({ load }: StagingPlan): Sheet => ({
  name: "load",
  title: "Load by skill and by maker",
  headings: ["by", "code", "week", "planned_min", "free_min", "overtime_min"],
  rows: load.map(({ by, code, week, planned, free, over }) => [by, code, week, String(planned), String(free), String(over)]),
});

/** Fittings by time, one row a garment; rows of one visit share its number. */
export const fittingsSheet = ({ fittings }: StagingPlan): Sheet => ({
  name: "fittings",
  title: "Fittings",
  headings: ["visit", "start", "end", "performer", "garment", "fitting", "fitter", "room", "minutes"],
  rows: [...fittings]
    .sort(
      (a, b) =>
        (a.visit ?? Number.POSITIVE_INFINITY) - (b.visit ?? Number.POSITIVE_INFINITY) || (a.start ?? 0) - (b.start ?? 0) || a.node - b.node,
    )
    .map(({ visit, start, end, performer, garment, name, fitter, room, minutes }) => [
      visit === null ? "" : String(visit),
      timeCell(start),
      timeCell(end),
      performer,
      garment,
      name,
      fitter ?? "",
      room ?? "",
      String(minutes),
    ]),
});

/** What a person must know, and what to do about it. */
export const notesSheet = ({ notes }: StagingPlan): Sheet => ({
  name: "notes",
  title: "What you must know",
  headings: ["kind", "about", "note", "mend"],
  rows: notes.map(({ kind, about, text, mend }) => [kind, about, text, mend]),
});
