import type { GarmentWork } from "#lib/breakdown/work";
import type { DayNumber, PlainDate } from "#lib/calendar/plainDate";
import type { Garment } from "#lib/casting/wardrobe";
import type { LevellingProblem } from "#lib/levelling/problem";
import type { Staging } from "#lib/staging/staging";
import type { Axis } from "./axis";
import type { Delivery } from "./goods";
import type { PlanNode, PlanNote } from "./stagingPlan";
import type { Taken } from "./taken";

/** A staging made ready for the engine: everything that can be computed before a plan is chosen. */
export interface Prepared {
  readonly staging: Staging;
  readonly garments: readonly Garment[];
  readonly works: readonly GarmentWork[];
  readonly problem: LevellingProblem;
  readonly nodes: readonly PlanNode[];
  readonly dayZero: DayNumber;
  /** Minutes of the problem to the wall clock and back: never add them to `dayZero` by hand. */
  readonly axis: Axis;
  /** Day from which work is planned, and on which goods not yet ordered are ordered. */
  readonly today: PlainDate;
  /** Nodes that wait for goods, in node order. */
  readonly deliveries: readonly Delivery[];
  /** What other productions of the workroom have taken; absent: it stands alone. */
  readonly taken?: Taken;
  /** What a person must know before there is a plan. */
  readonly notes: readonly PlanNote[];
}
