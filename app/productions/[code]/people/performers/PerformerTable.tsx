import { showDay } from "#lib/calendar/showDay";
import { State } from "../../../../_components/State";
import { plural } from "../../../../_data/plural";
import type { PerformerRow } from "./performerRows";

/** Everybody, with the age of their newest sheet and what is missing for what they must wear. */
export const PerformerTable = ({
  rows,
  base,
  measurements,
}: {
  readonly rows: readonly PerformerRow[];
  readonly base: string;
  readonly measurements: boolean;
}) => (
  <table className="stack">
    <thead>
      <tr>
        <th scope="col">Performer</th>
        <th scope="col">Dances</th>
        <th scope="col">Size group</th>
        <th scope="col" className="num">
          Garments
        </th>
        {measurements && (
          <>
            <th scope="col">Newest sheet</th>
            <th scope="col">Missing for what they wear</th>
          </>
        )}
      </tr>
    </thead>
    <tbody>
      {rows.map((row) => (
        <tr key={row.code}>
          <th scope="row" className="name b">
            <a href={`${base}/${encodeURIComponent(row.code)}`}>{row.name}</a>
            {row.minor && <span className="units"> minor</span>}
          </th>
          <td>{row.roles.join(", ")}</td>
          <td>{row.sizeGroup}</td>
          <td className="num" data-label="garments">
            {row.garments}
          </td>
          {row.sheet && (
            <>
              <td>
                <SheetAge row={row.sheet} />
              </td>
              <td>
                {row.sheet.missing.length === 0 ? (
                  row.garments > 0 && <span className="q">nothing</span>
                ) : (
                  <State code="wait">{plural(row.sheet.missing.length, "measurement")}</State>
                )}
              </td>
            </>
          )}
        </tr>
      ))}
    </tbody>
  </table>
);

const SheetAge = ({ row: { measured } }: { readonly row: NonNullable<PerformerRow["sheet"]> }) => {
  if (measured.taken === null) return <State code="late">never measured</State>;
  const age = (measured.days ?? 0) <= 0 ? "" : `${plural(measured.days ?? 0, "day")} old`;
  return measured.tooOld ? (
    <State code="late">
      {showDay(measured.taken)}, {age}
    </State>
  ) : (
    <>
      {showDay(measured.taken)} <span className="units">{age}</span>
    </>
  );
};
