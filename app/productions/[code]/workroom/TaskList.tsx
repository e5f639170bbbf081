import Link from "next/link";
import { showWall } from "#lib/calendar/showDay";
import type { PlannedTask, StagingPlan } from "#lib/planning/stagingPlan";
import { showHours } from "#lib/units/hours";
import { Swatch } from "../../../_components/Swatch";
import { Woven } from "../../../_components/Woven";
import { garmentHref } from "../../../_data/address";
import { dayOfFinish, dayOfWall } from "../../../_data/showDates";
import type { Window } from "./window";

const byStart = (a: PlannedTask, b: PlannedTask): number => (a.start ?? 0) - (b.start ?? 0) || a.key.localeCompare(b.key);

const isDrawn = ({ start, end }: PlannedTask, { from, to }: Pick<Window, "from" | "to">): boolean =>
  start !== null && end !== null && dayOfFinish(end) >= from && dayOfWall(start) <= to;

/** The timeline as tables: each maker's tasks in order of time. */
export const TaskList = ({
  plan,
  window,
  moveHref,
}: {
  readonly plan: StagingPlan;
  /** The days drawn. */
  readonly window: Pick<Window, "from" | "to">;
  /** Page that shows what follows from moving work; absent: nobody here may move any. */
  readonly moveHref?: string | undefined;
}) =>
  plan.staging.makers.map((maker) => {
    const tasks = plan.tasks.filter((task) => task.maker === maker.code && isDrawn(task, window)).toSorted(byStart);
    return (
      tasks.length > 0 && (
        <section key={maker.code} className="part" aria-label={maker.name}>
          <header>
            <h3>{maker.name}</h3> <span className="cap">{maker.trade}</span>
          </header>
          <table className="stack">
            <thead>
              <tr>
                <th scope="col">Task</th>
                <th scope="col">Garments</th>
                <th scope="col" className="num">
                  Hours
                </th>
                <th scope="col" className="num">
                  From
                </th>
                <th scope="col" className="num">
                  To
                </th>
                {moveHref && (
                  <th scope="col" className="no-print">
                    <span className="unseen">Elsewhere</span>
                  </th>
                )}
              </tr>
            </thead>
            <tbody>
              {tasks.map((task) => (
                <tr key={task.key}>
                  <td className="name">
                    <Swatch skill={task.skill} />
                    {task.name}
                  </td>
                  <td>
                    {task.garments.map((number) => (
                      <Woven key={number} number={number} href={garmentHref(plan.staging.production.code, number)} />
                    ))}
                  </td>
                  <td className="num">{showHours(task.minutes)}</td>
                  <td className="num">{task.start !== null && showWall(task.start)}</td>
                  <td className="num">{task.end !== null && showWall(task.end)}</td>
                  {moveHref && (
                    <td>
                      <Link href={`${moveHref}?key=${encodeURIComponent(task.key)}`} className="plain no-print" prefetch={false}>
                        Move
                        <span className="unseen">
                          {" "}
                          {task.name}, {task.garments.join(", ")}
                        </span>
                      </Link>
                    </td>
                  )}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )
    );
  });
