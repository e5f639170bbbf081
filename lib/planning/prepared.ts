import type { GarmentWork } from "#lib/breakdown/work";
import type { DayNumber } from "#lib/calendar/plainDate";
import type { Garment } from "#lib/casting/wardrobe";
import type { LevellingProblem } from "#lib/levelling/problem";
import type { Staging } from "#lib/staging/staging";
import type { PlanNode } from "./stagingPlan";

/** A staging made ready for the engine: everything that can be computed before a plan is chosen. */
export interface Prepared {
  readonly staging: Staging;
  readonly garments: readonly Garment[];
  readonly works: readonly GarmentWork[];
  readonly problem: LevellingProblem;
  readonly nodes: readonly PlanNode[];
  readonly dayZero: DayNumber;
}
