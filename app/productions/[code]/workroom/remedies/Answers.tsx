import { showWall } from "#lib/calendar/showDay";
import type { Production } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { showMoney } from "#lib/units/money";
import type { PlanFigures } from "#lib/whatif/remedies/tryRemedy";
import type { WhatHelps } from "#lib/whatif/remedies/whatHelps";
import { Wide } from "../../../../_components/Wide";
import { Woven } from "../../../../_components/Woven";
import { garmentHref } from "../../../../_data/address";

const HEADS = ["Late", "All done", "Overtime"] as const;

const Figures = ({ figures }: { readonly figures: PlanFigures }) => (
  <>
    <td className="num" data-label="Late">
      {figures.lateGarments === 0 ? "none" : figures.lateGarments}
    </td>
    <td className="num" data-label="All done">
      {showWall(figures.finish)}
    </td>
    <td className="num" data-label="Overtime">
      {figures.overtimeMinutes === 0 ? "none" : showHours(figures.overtimeMinutes)}
    </td>
  </>
);

/** What each remedy comes to, the best first, below the plan with nothing changed. Who may not see money sees none. */
export const Answers = ({
  found,
  production,
  money,
}: {
  readonly found: WhatHelps;
  readonly production: Production;
  readonly money: boolean;
}) => {
  const { unchanged, answers } = found;
  const { currency, words, code } = production;
  const cost = (amount: number) => showMoney(amount, currency, words);
  const change = ({ cost: then }: PlanFigures) =>
    then === unchanged.cost ? "the same" : `${then > unchanged.cost ? "+" : "−"}${cost(Math.abs(then - unchanged.cost))}`;
  const named = (numbers: readonly string[]) =>
    numbers.map((number) => <Woven key={number} number={number} href={garmentHref(code, number)} />);
  return (
    <Wide label="What would help, the best first">
      <table className="stack">
        <thead>
          <tr>
            <th scope="col">Remedy</th>
            {HEADS.map((head) => (
              <th key={head} scope="col" className="num">
                {head}
              </th>
            ))}
            {money && (
              <th scope="col" className="num">
                Cost
              </th>
            )}
            <th scope="col">Then</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row" className="name">
              Nothing changed
            </th>
            <Figures figures={unchanged} />
            {money && (
              <td className="num" data-label="Cost">
                {cost(unchanged.cost)}
              </td>
            )}
            <td className="q">searched on for as long as each below</td>
          </tr>
          {answers.map(({ asks, tried, refused }) => (
            <tr key={asks}>
              <th scope="row" className="name">
                {asks}
              </th>
              {tried === null ? (
                <td colSpan={money ? 5 : 4}>{refused}</td>
              ) : (
                <>
                  <Figures figures={tried.figures} />
                  {money && (
                    <td className="num" data-label="Cost">
                      {change(tried.figures)}
                    </td>
                  )}
                  <td data-label="Then">
                    {tried.mended.length > 0 && <>in time: {named(tried.mended)} </>}
                    {tried.spoiled.length > 0 && (
                      <>
                        <b className="bad">late:</b> {named(tried.spoiled)}{" "}
                      </>
                    )}
                    {tried.eased.length > 0 && <span className="q">less late: {tried.eased.length} </span>}
                    {tried.mended.length + tried.spoiled.length + tried.eased.length === 0 && (
                      <span className="q">no garment crosses its date</span>
                    )}
                  </td>
                </>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </Wide>
  );
};
