import { showDay } from "#lib/calendar/showDay";
import type { Material } from "#lib/materials/material";
import type { MaterialWeek } from "#lib/purchasing/inWeeks";
import type { LengthSystem } from "#lib/units/showLength";
import { State } from "../../../../_components/State";
import { showQuantity } from "../../../../_data/quantity";

interface Props {
  readonly material: Material;
  readonly weeks: readonly MaterialWeek[];
  readonly lengths: LengthSystem;
}

/** A material gross to net, one row a week; weeks in which nothing happens are left out. */
export const WeekTable = ({ material, weeks, lengths }: Props) => {
  const show = (quantity: number) => (quantity === 0 ? "" : showQuantity(quantity, material.measure, lengths));
  const busy = weeks.filter(({ needed, due, bought, toOrder }) => needed + due + bought + toOrder > 0);
  return (
    <section className="part" aria-labelledby="weeks">
      <header>
        <h2 id="weeks">{material.name}</h2>
        <span className="q small">{material.colour}; washing, waste and spare included</span>
      </header>
      <table className="stack">
        <thead>
          <tr>
            <th scope="col">Week of</th>
            {["Cut", "Comes", "Short", "Bought for it", "To order", "Left"].map((heading) => (
              <th key={heading} scope="col" className="num">
                {heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {busy.map((week) => (
            <tr key={week.week}>
              <th scope="row">{showDay(week.week)}</th>
              <td className="num fr" data-label="cut">
                {show(week.needed)}
              </td>
              <td className="num fr" data-label="comes">
                {show(week.due)}
              </td>
              <td className="num fr" data-label="short">
                {week.short > 0 && <State code="wait">{show(week.short)}</State>}
              </td>
              <td className="num fr" data-label="bought for it">
                {show(week.bought)}
              </td>
              <td className="num fr" data-label="to order">
                {show(week.toOrder)}
              </td>
              <td className="num b fr" data-label="left">
                {week.left < 0 ? <State code="late">{show(-week.left)} too little</State> : show(week.left) || "0"}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};
