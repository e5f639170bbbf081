import type { GarmentWork } from "#lib/breakdown/work";
import { showWall } from "#lib/calendar/showDay";
import type { PlannedTask, StagingPlan } from "#lib/planning/stagingPlan";
import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { words as wordsOf } from "#lib/words/words";
import type { TaskMark } from "#prisma/work/marks";
import { figures, Heads } from "../../../../_components/Heads";
import { OpenedLine } from "../../../../_components/OpenedLine";
import { State, type StateCode } from "../../../../_components/State";
import { Swatch } from "../../../../_components/Swatch";
import { Wide } from "../../../../_components/Wide";
import { nameOfMaker } from "../../../../_data/names";

const When = ({ task }: { readonly task: PlannedTask | undefined }) => {
  if (!task) return <td className="num" />;
  if (task.start === null || task.end === null)
    return (
      <td className="num">
        <State code="late">no place</State>
      </td>
    );
  return (
    <td className="num">
      {showWall(task.start)} <span className="units">to {showWall(task.end)}</span>
    </td>
  );
};

const STATES: Readonly<Partial<Record<TaskMark["state"], StateCode>>> = { begun: "hand", stuck: "late", done: "done" };

/** Begun, stuck or done, and what it took so far. */
const Marked = ({ mark: { state, stuck, worked } }: { readonly mark: TaskMark }) => {
  const code = STATES[state];
  return code && <State code={code}>{[state, stuck, worked > 0 ? showHours(worked) : ""].filter(Boolean).join(", ")}</State>;
};

/** Its tasks in the order they may be done, with hours; the arithmetic, and what each waits for, in the opened line. */
export const Tasks = ({
  work,
  plan,
  staging,
  markOf,
}: {
  readonly work: GarmentWork;
  readonly plan: StagingPlan | null;
  readonly staging: Staging;
  /** How far somebody has said they are with it. */
  readonly markOf: (task: PlannedTask) => TaskMark | undefined;
}) => {
  const { words } = staging.production;
  const nameOf = (code: string): string =>
    [...work.operations, ...work.fittings].find((each) => each.code === code)?.name[words].toLowerCase() ?? code;
  return (
    <Wide label="Tasks in order">
      <table className="stack">
        <Heads of={["Task", "Skill", figures("Likely"), figures("Low to high"), "Maker", figures("When")]} />
        {work.operations.map((operation) => {
          const task = plan?.tasks.find((each) => each.operation === operation.code && each.garments.includes(work.garment));
          const waits = operation.waitsFor.map(
            (wait) => nameOf(wait.on) + (wait.lagMinutes > 0 ? `, and ${showHours(wait.lagMinutes)}` : ""),
          );
          const mark = task && markOf(task);
          return (
            <OpenedLine
              key={operation.code}
              name={
                <>
                  <b>{operation.name[words]}</b> {mark && <Marked mark={mark} />}
                </>
              }
              columns={6}
              cells={
                <>
                  <td className="nb">
                    <Swatch skill={operation.skill} />
                    {wordsOf(words).skills[operation.skill]}
                  </td>
                  <td className="num b">{showHours(operation.minutes[1])}</td>
                  <td className="num q">
                    {showHours(operation.minutes[0])} to {showHours(operation.minutes[2])}
                  </td>
                  <td>{task ? nameOfMaker(staging, task.maker) : ""}</td>
                  <When task={task} />
                </>
              }
            >
              {operation.arithmetic}
              {task &&
                task.garments.length > 1 &&
                `\nIn one go with ${task.garments.filter((number) => number !== work.garment).join(", ")}: ${showHours(task.minutes)} together.`}
              {waits.length > 0 && `\nWaits for ${waits.join("; ")}.`}
              {operation.straining && `\nStraining: rest ${operation.straining.rest} min after ${showHours(operation.straining.run)}.`}
            </OpenedLine>
          );
        })}
      </table>
    </Wide>
  );
};
