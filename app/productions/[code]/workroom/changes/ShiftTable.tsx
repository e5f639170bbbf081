import { showWall } from "#lib/calendar/showDay";
import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import type { Shift } from "#lib/whatif/planMoves";
import { Heads } from "../../../../_components/Heads";
import { Wide } from "../../../../_components/Wide";
import { Woven } from "../../../../_components/Woven";
import { garmentHref } from "../../../../_data/address";

const late = (minutes: number): string => (minutes === 0 ? "in time" : `late by ${showHours(minutes)}`);
const shown = (wall: number | null): string => (wall === null ? "no place" : showWall(wall));

/** Garments that end at another time: where they were, where they are, and whether that is in time. */
export const ShiftTable = ({
  shifts,
  staging,
  label,
}: {
  readonly shifts: readonly Shift[];
  readonly staging: Staging;
  readonly label: string;
}) => (
  <Wide label={label}>
    <table className="stack">
      <Heads of={["Garment", "Before", "After", "Then"]} />
      <tbody>
        {shifts.map(({ garment, before, after, minutesLateBefore, minutesLateAfter }) => (
          <tr key={garment}>
            <th scope="row" className="name">
              <Woven number={garment} href={garmentHref(staging.production.code, garment)} />
            </th>
            <td className="q" data-label="Before">
              {shown(before)}
            </td>
            <td data-label="After">{shown(after)}</td>
            <td data-label="Then" className={minutesLateAfter > 0 ? "bad" : undefined}>
              {minutesLateBefore === 0 && minutesLateAfter === 0
                ? "in time, as before"
                : `${late(minutesLateAfter)}, before: ${late(minutesLateBefore)}`}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  </Wide>
);
