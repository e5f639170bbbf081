import type { PlainDate } from "#lib/calendar/plainDate";
import type { Skill } from "#lib/labour/skills";
import type { Minutes } from "#lib/units/quantities";

export const ORIGINS = ["sample", "alteration", "parade note", "by hand"] as const;
/** Where work comes from that no construction lists. */
export type Origin = (typeof ORIGINS)[number];

/** A piece of work for a maker that is no step of a construction. */
export interface OtherTask {
  readonly code: string;
  readonly origin: Origin;
  readonly title: string;
  /** What it is about: the number of a garment, a set, or a material; at most one of them. */
  readonly garment: string | null;
  readonly set: string | null;
  readonly material: string | null;
  /** Operation, of the garment or of every garment of the set, that waits until it is done. */
  readonly gates: string | null;
  readonly skill: Skill;
  /** Standard minutes: low, likely, high. */
  readonly minutes: readonly [Minutes, Minutes, Minutes];
  /** Kind of machine. */
  readonly machine: string | null;
  /** 1 first, 2 ordinary, 3 when there is time. */
  readonly priority: number;
  /** Milestone by which it must be done. */
  readonly due: string | null;
  /** Approval it waits for: one of the approvals, or that of the prototype of a set, by the set's code. */
  readonly waitsFor: string | null;
  /** Approval that a sample is made for. */
  readonly shownFor: string | null;
  readonly askedBy: string;
  /** Not worked before that day. */
  readonly askedOn: PlainDate | null;
  readonly doneOn: PlainDate | null;
}

/** Work still to do. */
export const openTasks = (tasks: readonly OtherTask[]): readonly OtherTask[] => tasks.filter(({ doneOn }) => doneOn === null);

/** The garment is not finished without it: work on a garment with no day of its own. */
export const isPartOfGarment = ({ origin, garment, due }: OtherTask): boolean => origin !== "sample" && garment !== null && due === null;

/** It is done on the finished garment: work on a garment with a day of its own, that no operation waits for. */
export const isAfterGarment = ({ origin, garment, due, gates }: OtherTask): boolean =>
  origin !== "sample" && garment !== null && due !== null && gates === null;

/** What a minute of lateness weighs beside that of an ordinary garment. */
export const weightOf = ({ priority }: OtherTask): number => (priority === 1 ? 4 : priority === 2 ? 1 : 0.25);
