import type { Origin } from "#lib/approvals/otherWork";
import type { GarmentWork } from "#lib/breakdown/work";
import type { DayNumber, PlainDate, WallMinute } from "#lib/calendar/plainDate";
import type { Garment } from "#lib/casting/wardrobe";
import type { CuttingPlan } from "#lib/cutting/cuttingPlan";
import type { Skill } from "#lib/labour/skills";
import type { LevellingAnswer, LevellingProblem } from "#lib/levelling/problem";
import type { PurchaseList } from "#lib/purchasing/purchase";
import type { Staging } from "#lib/staging/staging";
import type { MinorUnits, Minutes } from "#lib/units/quantities";

/** A staging with everything computed from it: what the command line writes out and the screens show. */
export interface StagingPlan {
  readonly staging: Staging;
  readonly garments: readonly Garment[];
  readonly works: readonly GarmentWork[];
  readonly problem: LevellingProblem;
  readonly answer: LevellingAnswer;
  /** Day that minute 0 of the problem stands for. */
  readonly dayZero: DayNumber;
  /** What each node of the problem is, in node order. */
  readonly nodes: readonly PlanNode[];
  readonly tasks: readonly PlannedTask[];
  readonly fittings: readonly PlannedFitting[];
  /** Those still to be given. */
  readonly approvals: readonly PlannedApproval[];
  readonly garmentStates: readonly GarmentState[];
  readonly load: readonly LoadCell[];
  readonly purchase: PurchaseList;
  readonly cutting: readonly CuttingPlan[];
  readonly notes: readonly PlanNote[];
  readonly summary: PlanSummary;
}

/** The only link between engine and wardrobe. `key` is stable from plan to plan: stored plans and pins refer to it. */
export type PlanNode = { readonly key: string } & (
  | { readonly kind: "operation"; readonly garments: readonly string[]; readonly operation: string }
  | { readonly kind: "fitting"; readonly garment: string; readonly fitting: string; readonly wearer: number }
  /** `approval` is its code: for a prototype that of its set. `set` waits for it. */
  | { readonly kind: "approval"; readonly approval: string; readonly set: string | null }
  /** Work that no construction lists. */
  | { readonly kind: "other"; readonly task: string; readonly garment: string | null }
  /** All work on a garment is done: what its due date is set on. */
  | { readonly kind: "finished"; readonly garment: string }
);

export interface PlannedTask {
  readonly node: number;
  /** Stable key: `HM 014/mount` or, for a batch, `HM-014+3/cut`. */
  readonly key: string;
  /** None for other work that is not about one garment. */
  readonly garments: readonly string[];
  readonly origin: "operation" | Origin;
  /** Code of the operation, or of the other work. */
  readonly operation: string;
  readonly name: string;
  readonly skill: Skill;
  readonly machine: string | null;
  readonly minutes: Minutes;
  /** Null when unplaced. */
  readonly maker: string | null;
  readonly start: WallMinute | null;
  readonly end: WallMinute | null;
  readonly stretches: readonly { readonly start: WallMinute; readonly end: WallMinute }[];
  readonly overtimeMinutes: Minutes;
}

export interface PlannedFitting {
  readonly node: number;
  readonly garment: string;
  readonly fitting: string;
  readonly name: string;
  readonly performer: string;
  readonly minutes: Minutes;
  readonly fitter: string | null;
  readonly room: string | null;
  readonly start: WallMinute | null;
  readonly end: WallMinute | null;
  /** Number of the visit it is part of, in order of time. */
  readonly visit: number | null;
}

export interface PlannedApproval {
  readonly node: number;
  readonly code: string;
  readonly title: string;
  readonly by: string;
  /** What is looked at: number of the prototype, or codes of the samples still to be made. */
  readonly prototype: string | null;
  readonly samples: readonly string[];
  readonly askedOn: PlainDate | null;
  readonly expectedOn: PlainDate | null;
  /** When the plan counts on the answer; null when what is looked at has no place in it. */
  readonly answer: WallMinute | null;
}

export interface GarmentState {
  readonly garment: string;
  /** Standard minutes of its tasks (a batch's minutes shared out evenly, largest remainder). */
  readonly minutes: Minutes;
  readonly finish: WallMinute | null;
  readonly due: WallMinute;
  readonly minutesLate: Minutes;
  /** Working days after the due day; 0 when in time. */
  readonly daysLate: number;
  /** Why it is late, in words, most telling first; empty when it is not. */
  readonly why: readonly string[];
  /** Links in words that tile the way from release to finish. */
  readonly links: readonly { readonly text: string; readonly cause: string; readonly start: WallMinute; readonly end: WallMinute }[];
}

/** Hours needed and free for one skill (or one maker) in one week. */
export interface LoadCell {
  readonly by: "skill" | "maker";
  readonly code: string;
  /** Monday. */
  readonly week: PlainDate;
  /** Minutes of work the plan puts into that week. */
  readonly planned: Minutes;
  /** Productive minutes free, those with the skill shared out over their skills by need. */
  readonly free: Minutes;
  readonly over: Minutes;
}

export interface PlanNote {
  readonly kind: "late" | "unplaced" | "measurement" | "parameter" | "material" | "purchase" | "approval" | "caution";
  /** Garment, maker, material, approval or other work it is about. */
  readonly about: string;
  readonly text: string;
  readonly mend: string;
}

export interface PlanSummary {
  readonly garments: number;
  readonly tasks: number;
  readonly fittings: number;
  readonly visits: number;
  readonly minutesBySkill: Readonly<Partial<Record<Skill, Minutes>>>;
  readonly finish: WallMinute;
  /** No plan finishes before this. */
  readonly finishBound: WallMinute;
  readonly lateGarments: number;
  readonly weightedLateness: number;
  readonly latenessBound: number;
  readonly overtimeMinutes: Minutes;
  readonly overtimeBound: Minutes | null;
  readonly labourCost: MinorUnits;
  readonly materialCost: MinorUnits;
  readonly seed: number;
  readonly rounds: number;
  readonly schedules: number;
  readonly rule: string;
}
