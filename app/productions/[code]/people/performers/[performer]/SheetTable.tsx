import { showDate } from "#lib/calendar/showDay";
import { MEASUREMENTS, type Measurement, type MeasurementSheet } from "#lib/measurements/measurement";
import { type LengthSystem, showLength } from "#lib/units/showLength";
import type { Words } from "#lib/words/words";
import { State } from "../../../../../_components/State";
import { Wide } from "../../../../../_components/Wide";
import styles from "./SheetTable.module.css";
import type { ShownSheets } from "./shownSheets";

/** Sheets side by side, the newest first, and by the number on the figure which garments each is wanted for. */
export const SheetTable = ({
  shown,
  words,
  lengths,
}: {
  readonly shown: ShownSheets;
  readonly words: Words;
  readonly lengths: LengthSystem;
}) => (
  <Wide label="Measurements">
    <table className={styles.sheet}>
      <caption>
        {shown.whole
          ? "The newest sheet first. A worked body is larger about the ribs: compare warm with warm."
          : "What the garments made for this performer are cut by, from the newest sheet."}
      </caption>
      <thead>
        <tr>
          <th scope="col" className="num">
            No.
          </th>
          <th scope="col">Measurement</th>
          {shown.sheets.map((sheet) => (
            <th key={sheet.taken} scope="col" className="num">
              {showDate(sheet.taken)}
              <br />
              <span className="units">{words.bodies[sheet.body].toLowerCase()}</span>
            </th>
          ))}
          <th scope="col">Wanted for</th>
        </tr>
      </thead>
      <tbody>
        {shown.measurements.map((name) => (
          <tr key={name} id={`m-${name}`}>
            <td className="num q">{MEASUREMENTS.indexOf(name) + 1}</td>
            <th scope="row">{words.measurements[name]}</th>
            {shown.sheets.map((sheet, at) => (
              <td key={sheet.taken} className="num fr">
                {takenOn(sheet, name, lengths)}
                {shown.whole && <Change sheet={sheet} before={shown.sheets[at + 1]} name={name} lengths={lengths} />}
              </td>
            ))}
            <td>
              <Wanted shown={shown} name={name} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  </Wide>
);

const takenOn = ({ values }: MeasurementSheet, name: Measurement, lengths: LengthSystem): string => {
  const value = values[name];
  return value === undefined ? "" : showLength(value, lengths);
};

/** By how much it is other than on the sheet before. */
const Change = ({
  sheet,
  before,
  name,
  lengths,
}: {
  readonly sheet: MeasurementSheet;
  readonly before: MeasurementSheet | undefined;
  readonly name: Measurement;
  readonly lengths: LengthSystem;
}) => {
  const [is, was] = [sheet.values[name], before?.values[name]];
  if (is === undefined || was === undefined || is === was) return null;
  return (
    <span className="units">
      {" "}
      {is > was ? "+" : "−"}
      {showLength(Math.abs(is - was), lengths)}
    </span>
  );
};

const Wanted = ({ shown, name }: { readonly shown: ShownSheets; readonly name: Measurement }) => {
  const wanted = shown.wanted.find(({ measurement }) => measurement === name);
  if (!wanted) return null;
  const garments =
    wanted.garments.length > 3
      ? `${wanted.garments.slice(0, 3).join(", ")} and ${wanted.garments.length - 3} more`
      : wanted.garments.join(", ");
  return (
    <>
      {wanted.from !== "sheet" && <State code="wait">missing</State>} <span className="q">{garments}</span>
    </>
  );
};
