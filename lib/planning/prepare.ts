import { openApprovals } from "#lib/approvals/openApprovals";
import { breakDown } from "#lib/breakdown/breakDown";
import type { GarmentWork } from "#lib/breakdown/work";
import { dayNumber, mondayOf } from "#lib/calendar/days";
import { type DayNumber, MINUTES_PER_DAY, type PlainDate } from "#lib/calendar/plainDate";
import { garmentsOf } from "#lib/casting/garments";
import type { Garment } from "#lib/casting/wardrobe";
import { workroomHours } from "#lib/labour/calendars";
import { SKILLS } from "#lib/labour/skills";
import type { Interval, LevellingProblem } from "#lib/levelling/problem";
import type { Staging } from "#lib/staging/staging";
import { answersGiven, workingDay } from "./answers";
import { overdueAnswers } from "./approvalNotes";
import { approvals } from "./approvals";
import { makeAxis, onAxis, toAxis } from "./axis";
import { dues } from "./dues";
import { earlyNotes } from "./earlyNotes";
import { engineNode } from "./engineNodes";
import { deliveries } from "./goods";
import { makeGraph } from "./graph";
import { otherNodes } from "./otherNodes";
import { type OutDays, outMinutes } from "./outwork";
import { engineMachines, engineMakers, enginePerformers, engineRooms } from "./people";
import type { Prepared } from "./prepared";
import type { PlanNode } from "./stagingPlan";

/** Calendars run on so long after the last milestone, so that late work has a place and a cost. */
const WEEKS_AFTER = 8;

export interface PrepareOptions {
  /** Day from which work is planned and goods are ordered. */
  readonly today: PlainDate;
  /** Day on which a hired or bought garment comes: no work is done on it before. Null: it is there. */
  readonly arrives?: (garment: Garment) => PlainDate | null;
  /** Days by the calendar for which an outworker has a garment. Null: it is made here. */
  readonly out?: OutDays;
  /** Overtime asked of makers on certain days, on the wall clock, by maker. */
  readonly overtime?: ReadonlyMap<string, readonly Interval[]>;
}

/** Breaks a staging down and states it as a problem for the engine. Work begins on `today`, or the production's first day if that is later. */
export const prepare = (staging: Staging, options: PrepareOptions): Prepared => {
  const garments = garmentsOf(staging);
  return prepareWorks(staging, garments, breakDown(staging, garments), options);
};

/** The same for garments already broken down. */
export const prepareWorks = (
  staging: Staging,
  garments: readonly Garment[],
  works: readonly GarmentWork[],
  { today, arrives, out = () => null, overtime = new Map() }: PrepareOptions,
): Prepared => {
  // Calendars begin with the production, so that a plan kept since then can be read beside them; new work begins no sooner than today.
  const starts = dayNumber(staging.production.starts);
  const days = { from: starts, to: lastDay(staging, today) + 7 * WEEKS_AFTER };
  const first = Math.max(dayNumber(today), starts);
  const dayZero = mondayOf(days.from);
  const axis = makeAxis(dayZero, days.to, staging.production.zone);

  const outside = outMinutes(garments, works, out);
  const graph = makeGraph(garments, works, staging.sets, outside.has);
  const other = otherNodes(staging, garments, works, graph);
  const gates = approvals(openApprovals(staging, garments), garments, works, graph, other, workingDay(staging));
  const nodes = [...graph.nodes, ...other.nodes, ...gates.nodes];
  const goods = deliveries(staging, works, graph, today);
  const startOf = (day: DayNumber) => toAxis(axis, day * MINUTES_PER_DAY);
  const goodsThere = new Map(goods.deliveries.map(({ node, day }) => [node, startOf(dayNumber(day))]));
  const garmentThere = new Map(
    garments.flatMap((garment) => {
      const day = arrives?.(garment) ?? null;
      return day === null ? [] : [[garment.number, startOf(dayNumber(day))] as const];
    }),
  );

  const answered = answersGiven(gates, staging, first, days.to);
  const firstDay = (node: number): DayNumber => {
    const asked = other.taskAt.get(node)?.askedOn ?? null;
    return Math.max(first, answered.get(node) ?? first, asked === null ? first : dayNumber(asked));
  };

  const machines = engineMachines(staging, [
    ...works.flatMap((work) => work.operations.flatMap(({ machine }) => machine ?? [])),
    ...[...other.taskAt.values()].flatMap(({ machine }) => machine ?? []),
  ]);
  const sources = {
    garments: new Map(garments.map((garment) => [garment.number, garment])),
    works: new Map(works.map((work) => [work.garment, work])),
    batchOf: graph.batchOf,
    taskAt: other.taskAt,
    machines,
    performers: new Map(staging.performers.map(({ code }, at) => [code, at])),
    release: (node: number) =>
      Math.max(
        startOf(firstDay(node)),
        goodsThere.get(node) ?? 0,
        ...garmentsAt(nodes[node]!).map((garment) => garmentThere.get(garment) ?? 0),
      ),
    out: outside.minutes,
  };
  const open = onAxis(axis, workroomHours(staging.makers, staging.absences, days));
  const problem: LevellingProblem = {
    skills: SKILLS,
    makers: engineMakers(staging, axis, days, overtime),
    machines,
    rooms: engineRooms(staging, open),
    performers: enginePerformers(staging, axis, days),
    nodes: nodes.map((node, at) => engineNode(node, at, sources)),
    precedences: [...graph.precedences, ...other.precedences, ...gates.precedences],
    dues: dues(staging, garments, other, axis),
    open,
    horizon: startOf(days.to),
    week: { minutes: 7 * MINUTES_PER_DAY, offset: 0 },
    current: null,
  };
  const notes = [...earlyNotes(staging, garments, works), ...overdueAnswers(gates.approvalAt, today), ...goods.notes];
  return { staging, garments, works, problem, nodes, dayZero, axis, today, deliveries: goods.deliveries, notes };
};

/** Garments that are worked on at a node. */
const garmentsAt = (node: PlanNode): readonly string[] => {
  if (node.kind === "approval") return [];
  if (node.kind === "other") return node.garment === null ? [] : [node.garment];
  return node.kind === "operation" ? node.garments : [node.garment];
};

const lastDay = ({ milestones, production }: Staging, today: PlainDate): DayNumber =>
  Math.max(dayNumber(today), dayNumber(production.starts), ...milestones.map(({ date }) => dayNumber(date)));
