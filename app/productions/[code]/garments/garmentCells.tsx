import { showDay } from "#lib/calendar/showDay";
import { showHours } from "#lib/units/hours";
import { State, type StateCode } from "../../../_components/State";
import { Woven } from "../../../_components/Woven";
import type { ColumnId } from "./garmentColumns";
import type { GarmentRow, GarmentStateCode } from "./garmentRow";

const MARKS: Readonly<Record<GarmentStateCode, StateCode>> = { late: "late", unplaced: "wait", ready: "done", unlevelled: "none" };

const CELLS: Readonly<Record<ColumnId, (row: GarmentRow) => React.ReactNode>> = {
  number: (row) => <Woven number={row.number} href={row.href} />,
  name: (row) => (
    <>
      {row.name}
      {row.set && <span className="units"> {row.set}</span>}
    </>
  ),
  role: (row) => (
    <>
      {row.role} <span className="units">{row.wearers}</span>
    </>
  ),
  made: (row) => row.made,
  source: (row) => row.source,
  shared: (row) => row.shared,
  weight: (row) => row.weight,
  minutes: (row) => (row.minutes > 0 ? showHours(row.minutes) : ""),
  fittings: (row) => row.fittings || "",
  ready: (row) => row.ready && showDay(row.ready),
  due: (row) => row.due && showDay(row.due),
  state: (row) => <State code={MARKS[row.state]}>{row.said}</State>,
};

/** What stands in a cell of the list. */
export const cellOf = (id: ColumnId, row: GarmentRow): React.ReactNode => CELLS[id](row);
