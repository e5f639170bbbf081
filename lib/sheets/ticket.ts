import { isPartOfGarment, openTasks } from "#lib/approvals/otherWork";
import type { GarmentWork, WorkOperation } from "#lib/breakdown/work";
import type { PlainDate, WallMinute } from "#lib/calendar/plainDate";
import type { Garment } from "#lib/casting/wardrobe";
import { versionMeant } from "#lib/constructions/versions";
import type { Skill } from "#lib/labour/skills";
import { bodyOf } from "#lib/measurements/body";
import { MEASUREMENTS, type Measurement } from "#lib/measurements/measurement";
import type { PlannedFitting, PlannedTask } from "#lib/planning/stagingPlan";
import type { Staging } from "#lib/staging/staging";
import type { Length, Minutes } from "#lib/units/quantities";
import { garmentCautions, taskCautions } from "./cautions";

/** One task to be ticked off. */
export interface TicketLine {
  readonly name: string;
  readonly part: string;
  readonly skill: Skill;
  /** Code of the maker; null when nobody is planned. */
  readonly maker: string | null;
  /** Likely, at standard pace; of a batch the whole batch. */
  readonly minutes: Minutes;
  /** Numbers of the others done in one go. */
  readonly together: readonly string[];
  readonly start: WallMinute | null;
  readonly cautions: readonly string[];
}

/** The order for a garment's tasks, as it is printed: one sheet of several when there are many. */
export interface Ticket {
  readonly garment: Garment;
  /** From 1; `sheets` belong together. */
  readonly sheet: number;
  readonly sheets: number;
  readonly lines: readonly TicketLine[];
  /** What the first wearer measures, of what its construction goes by; empty for whoever may not see it. */
  readonly body: readonly (readonly [Measurement, Length])[];
  /** Fittings still to come, in order. */
  readonly fittings: readonly Pick<PlannedFitting, "name" | "performer" | "start">[];
  readonly cautions: readonly string[];
  readonly due: { readonly name: string; readonly date: PlainDate } | null;
}

export interface TicketSource {
  readonly staging: Staging;
  readonly tasks: readonly PlannedTask[];
  readonly fittings: readonly PlannedFitting[];
}

/** As many lines as half a sheet of A4 or Letter holds. */
const MOST_LINES = 6;

/** The tickets of one garment: every task, or those for which `isWanted` says so of the plan's task. None when there is nothing to do. */
export const ticketsOf = (
  garment: Garment,
  work: GarmentWork,
  source: TicketSource,
  isWanted: (task: PlannedTask | undefined) => boolean = () => true,
): readonly Ticket[] => {
  const { staging } = source;
  const lines = [...operationLines(work, source, isWanted), ...otherLines(garment, source, isWanted)];
  const sheets = Math.ceil(lines.length / MOST_LINES);
  // Shared out evenly, so that the last sheet does not carry one line.
  const each = Math.ceil(lines.length / sheets);
  const due = staging.milestones.find(({ code }) => code === garment.due);
  const kinds = new Map(staging.materials.map(({ code, kind }) => [code, kind]));
  return Array.from({ length: sheets }, (_, at) => ({
    garment,
    sheet: at + 1,
    sheets,
    lines: lines.slice(at * each, (at + 1) * each),
    body: bodyLines(garment, staging),
    fittings: source.fittings.filter((fitting) => fitting.garment === garment.number),
    cautions: garmentCautions(new Set(work.needs.flatMap(({ material }) => kinds.get(material) ?? [])), garment.source),
    due: due ? { name: due.name, date: due.date } : null,
  }));
};

const operationLines = (work: GarmentWork, { staging, tasks }: TicketSource, isWanted: (task: PlannedTask | undefined) => boolean) =>
  work.operations.flatMap((operation: WorkOperation): readonly TicketLine[] => {
    const task = tasks.find(
      ({ origin, operation: code, garments }) => origin === "operation" && code === operation.code && garments.includes(work.garment),
    );
    if (!isWanted(task)) return [];
    return [
      {
        name: operation.name[staging.production.words],
        part: operation.part,
        skill: operation.skill,
        maker: task?.maker ?? null,
        minutes: task?.minutes ?? operation.minutes[1],
        together: task?.garments.filter((number) => number !== work.garment) ?? [],
        start: task?.start ?? null,
        cautions: taskCautions(operation),
      },
    ];
  });

/** Alterations, parade notes and whatever else was asked for on this garment. */
const otherLines = ({ number }: Garment, { staging, tasks }: TicketSource, isWanted: (task: PlannedTask | undefined) => boolean) =>
  openTasks(staging.otherWork)
    .filter(({ garment }) => garment === number)
    .flatMap((other): readonly TicketLine[] => {
      const task = tasks.find(({ origin, operation }) => origin !== "operation" && operation === other.code);
      if (!isWanted(task)) return [];
      return [
        {
          name: other.title,
          part: isPartOfGarment(other) ? other.origin : `${other.origin}, on the finished garment`,
          skill: other.skill,
          maker: task?.maker ?? null,
          minutes: task?.minutes ?? other.minutes[1],
          together: [],
          start: task?.start ?? null,
          cautions: taskCautions({ ...other, straining: null }),
        },
      ];
    });

/** Measurements the construction goes by, of the wearer it is made for, in the order of a sheet. */
const bodyLines = ({ wearers, construction, version }: Garment, staging: Staging): Ticket["body"] => {
  const [first] = wearers;
  const meant = construction === null ? undefined : versionMeant(staging.constructions, construction, version);
  if (!first || !meant) return [];
  const { values } = bodyOf(staging, first);
  return MEASUREMENTS.flatMap((name) => {
    const value = values[name];
    return value === undefined || meant.medianBody[name] === undefined ? [] : [[name, value] as const];
  });
};
