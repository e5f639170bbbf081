import { showDay } from "#lib/calendar/showDay";
import type { Skill } from "#lib/labour/skills";
import type { LoadCell, StagingPlan } from "#lib/planning/stagingPlan";
import { words as wordsOf } from "#lib/words/words";
import { Swatch } from "../../_components/Swatch";
import { Wide } from "../../_components/Wide";
import { wholeHours } from "../../_data/hours";
import { nameOfMaker } from "../../_data/names";
import { type Load, loadRows } from "./loadRows";

const Cell = ({ load }: { readonly load: Load | null }) => (
  <td className="num">
    {load && (
      <>
        <span className={load.over > 0 ? "bad b" : undefined}>{wholeHours(load.planned)}</span>{" "}
        <span className="units">/{wholeHours(load.free)}</span>
      </>
    )}
  </td>
);

/** The hem picture in figures: hours the plan puts into each week, of productive hours free. */
export const LoadTable = ({ plan, by }: { readonly plan: StagingPlan; readonly by: LoadCell["by"] }) => {
  const table = loadRows(plan, by);
  const { skills, trade } = wordsOf(plan.staging.production.words);
  return (
    <Wide label="Hours needed and free, in figures">
      <table>
        <caption>Hours needed / productive hours free, by the Monday of the week</caption>
        <thead>
          <tr>
            <th scope="col">{by === "skill" ? "Skill" : trade.maker}</th>
            {table.weeks.map((week) => (
              <th scope="col" className="num" key={week}>
                {showDay(week).slice(4)}
              </th>
            ))}
            <th scope="col" className="num">
              All, needed
            </th>
            <th scope="col" className="num">
              Free
            </th>
            <th scope="col" className="num">
              Over
            </th>
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row) => (
            <tr key={row.code}>
              <th scope="row">
                {by === "skill" ? (
                  <>
                    <Swatch skill={row.code as Skill} />
                    {skills[row.code as Skill]}
                  </>
                ) : (
                  nameOfMaker(plan.staging, row.code)
                )}
              </th>
              {row.cells.map((cell, i) => (
                <Cell key={table.weeks[i]} load={cell} />
              ))}
              <td className="num b">{wholeHours(row.planned)}</td>
              <td className="num">{wholeHours(row.free)}</td>
              <td className="num bad b">{row.over > 0 && wholeHours(row.over)}</td>
            </tr>
          ))}
          <tr className="sum">
            <th scope="row">Workroom</th>
            {table.weeks.map((week, i) => {
              const cells = table.rows.map((row) => row.cells[i]);
              const all = (of: (load: Load) => number) => cells.reduce((total, cell) => total + (cell ? of(cell) : 0), 0);
              return <Cell key={week} load={{ planned: all((load) => load.planned), free: all((load) => load.free), over: 0 }} />;
            })}
            <td className="num">{wholeHours(table.planned)}</td>
            <td className="num">{wholeHours(table.free)}</td>
            <td className="num bad">{table.over > 0 && wholeHours(table.over)}</td>
          </tr>
        </tbody>
      </table>
    </Wide>
  );
};
