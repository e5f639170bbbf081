import Link from "next/link";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { markedAs, type TaskMark } from "#prisma/work/marks";
import { State } from "../../../../_components/State";
import { Woven } from "../../../../_components/Woven";
import { garmentHref, makerHref } from "../../../../_data/address";
import { nameOfMaker } from "../../../../_data/names";

/** Tasks somebody is stuck with, and what is in the way. */
export const StuckTasks = ({ plan, marks }: { readonly plan: StagingPlan; readonly marks: ReadonlyMap<string, TaskMark> }) => {
  const stuck = plan.tasks.flatMap((task) => {
    const mark = marks.get(markedAs(task));
    return mark?.state === "stuck" ? [{ task, said: mark.stuck }] : [];
  });
  const { code } = plan.staging.production;
  return (
    stuck.length > 0 && (
      <section className="part" aria-labelledby="stuck">
        <header>
          <h2 id="stuck">Stuck</h2>
        </header>
        <ul className="lines">
          {stuck.map(({ task, said }) => (
            <li key={task.key}>
              <State code="wait">{said}</State>{" "}
              {task.garments.map((number) => (
                <Woven key={number} number={number} href={garmentHref(code, number)} />
              ))}{" "}
              {task.name},{" "}
              {task.maker === null ? "nobody yet" : <Link href={makerHref(code, task.maker)}>{nameOfMaker(plan.staging, task.maker)}</Link>}
            </li>
          ))}
        </ul>
      </section>
    )
  );
};
