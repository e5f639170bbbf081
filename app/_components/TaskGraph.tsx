import type { GarmentWork } from "#lib/breakdown/work";
import { splitWall } from "#lib/calendar/clock";
import { showDay } from "#lib/calendar/showDay";
import { type GraphBox, type GraphNode, taskGraph } from "#lib/charts/taskGraph";
import { lateNodes } from "#lib/charts/timelinePlan";
import type { PlannedFitting, PlannedTask, StagingPlan } from "#lib/planning/stagingPlan";
import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { nameOfMaker } from "../_data/names";
import styles from "./Picture.module.css";
import { skillCloth } from "./skillCloth";

interface Props {
  readonly work: GarmentWork;
  /** Null before the workroom was levelled: then no makers and no days. */
  readonly plan: StagingPlan | null;
  readonly staging: Staging;
}

/** A garment's tasks and what waits for what: lanes by part, fittings as pins on the line, the red thread where it is late. */
export const TaskGraph = ({ work, plan, staging }: Props) => {
  const usage = staging.production.words;
  const graph = taskGraph(nodesOf(work, usage));
  if (graph.boxes.length === 0) return null;
  const tasks = new Map(plan?.tasks.filter((task) => task.garments.includes(work.garment)).map((task) => [task.operation, task]));
  const fittings = new Map(
    plan?.fittings.filter((fitting) => fitting.garment === work.garment).map((fitting) => [fitting.fitting, fitting]),
  );
  const late = new Set(plan ? lateNodes(plan) : []);
  const isLate = (code: string) => late.has(tasks.get(code)?.node ?? fittings.get(code)?.node ?? -1);
  const edges = graph.edges.map((edge) => ({ ...edge, isLate: isLate(edge.from) && isLate(edge.to) }));
  return (
    <svg
      className={styles.picture}
      viewBox={`-2 0 ${graph.width + 4} ${graph.height}`}
      width={graph.width + 4}
      height={graph.height}
      role="img"
      aria-label={`${work.operations.length} tasks and ${work.fittings.length} fittings of ${work.garment}, and what waits for what.`}
    >
      {edges
        .toSorted((a, b) => Number(a.isLate) - Number(b.isLate))
        .map((edge) => (
          <path
            key={`${edge.from} ${edge.to}`}
            d={edge.path}
            className={edge.isLate ? styles.red : undefined}
            style={edge.isLate ? undefined : { stroke: "var(--edge)", strokeWidth: 1.2, fill: "none" }}
          />
        ))}
      {graph.boxes.map((box) =>
        box.kind === "fitting" ? (
          <Fitting key={box.code} box={box} planned={fittings.get(box.code)} />
        ) : (
          <Task
            key={box.code}
            box={box}
            height={graph.boxHeight}
            operation={work.operations.find((operation) => operation.code === box.code)!}
            maker={plan ? nameOfMaker(staging, tasks.get(box.code)?.maker ?? null) : ""}
            planned={tasks.get(box.code)}
            isLate={isLate(box.code)}
          />
        ),
      )}
    </svg>
  );
};

const nodesOf = (work: GarmentWork, usage: "uk" | "us"): readonly GraphNode[] => [
  ...work.operations.map(({ code, part, name, waitsFor }) => ({
    code,
    kind: "task" as const,
    part,
    name: name[usage],
    waitsFor: waitsFor.map((wait) => wait.on),
  })),
  // A fitting of several wearers is one pin: they wait for the same work.
  ...[...new Map(work.fittings.map((fitting) => [fitting.code, fitting])).values()].map(({ code, name, waitsFor }) => ({
    code,
    kind: "fitting" as const,
    part: "fitting",
    name: name[usage],
    waitsFor: waitsFor.map((wait) => wait.on),
  })),
];

interface TaskProps {
  readonly box: GraphBox;
  readonly height: number;
  readonly operation: GarmentWork["operations"][number];
  readonly maker: string;
  readonly planned: PlannedTask | undefined;
  readonly isLate: boolean;
}

const Task = ({ box, height, operation, maker, planned, isLate }: TaskProps) => {
  const { weave, thread } = skillCloth(operation.skill);
  const top = box.y - height / 2;
  const below = top + 20 + 16 * (box.lines.length - 1);
  const day = planned?.start != null ? `, ${showDay(splitWall(planned.start).date)}` : "";
  return (
    <>
      <rect
        x={box.x}
        y={top}
        width={box.width}
        height={height}
        style={{ fill: "var(--sheet)", stroke: isLate ? "var(--madder)" : "var(--edge)", strokeWidth: isLate ? 1.8 : 1 }}
      />
      <rect x={box.x} y={top} width={9} height={height} style={{ fill: weave, stroke: thread }} />
      {box.lines.map((line, at) => (
        <text key={line} x={box.x + 17} y={top + 20 + 16 * at} className={`${styles.middle} ${styles.tight}`}>
          {line}
        </text>
      ))}
      <text x={box.x + 17} y={below + 17} className={`${styles.second} ${styles.tight}`}>
        {maker}
      </text>
      <text x={box.x + 17} y={below + 34} className={`${styles.second} ${styles.tight}`}>
        {showHours(operation.minutes[1])}
        {day}
      </text>
    </>
  );
};

const Fitting = ({ box, planned }: { readonly box: GraphBox; readonly planned: PlannedFitting | undefined }) => {
  const middle = box.x + box.width / 2;
  return (
    <>
      <circle cx={middle} cy={box.y} r={11} style={{ fill: "var(--plum-pale)", stroke: "var(--plum)", strokeWidth: 1.4 }} />
      <g className={styles.pin}>
        <circle cx={middle + 3} cy={box.y - 3.4} r={2.6} fill="currentColor" />
        <path d={`M${middle + 1.4} ${box.y - 1.6}L${middle - 4.5} ${box.y + 5.5}`} stroke="currentColor" strokeWidth="1.6" />
      </g>
      {box.lines.map((line, at) => (
        <text key={line} x={middle} y={box.y + 27 + 14 * at} className={`${styles.strong} ${styles.centred} ${styles.tight}`}>
          {line}
        </text>
      ))}
      {planned && (
        <text x={middle} y={box.y + 27 + 14 * box.lines.length} className={`${styles.second} ${styles.centred} ${styles.tight}`}>
          {planned.start === null ? "not placed" : showDay(splitWall(planned.start).date)}
        </text>
      )}
    </>
  );
};
