import { showDate } from "#lib/calendar/showDay";
import type { Garment, Wearer } from "#lib/casting/wardrobe";
import type { MeasurementSheet } from "#lib/measurements/measurement";
import type { Staging } from "#lib/staging/staging";
import { wearerName } from "../../../../_data/wearers";

/** The newest sheet of the performer; null when there is none or the place is not cast. */
const sheetOf = (wearer: Wearer, staging: Staging): MeasurementSheet | null =>
  staging.measurements
    .filter((sheet) => "performer" in sheet.of && sheet.of.performer === wearer.performer)
    .toSorted((a, b) => b.taken.localeCompare(a.taken))[0] ?? null;

const sheetWords = (sheet: MeasurementSheet | null): string =>
  sheet
    ? `measured ${showDate(sheet.taken)}, ${sheet.body === "not noted" ? "body not noted" : `${sheet.body} body`}`
    : "not measured: stands on the size group";

/** Who wears it: the first is the one it is made for. */
export const Wearers = ({
  garment,
  staging,
  measurements,
}: {
  readonly garment: Garment;
  readonly staging: Staging;
  readonly measurements: boolean;
}) => (
  <section className="part" aria-labelledby="wearers">
    <header>
      <h2 id="wearers">Wearers</h2>
    </header>
    {garment.wearers.length === 0 ? (
      <p className="q">Nobody is cast for it yet.</p>
    ) : (
      <table>
        <thead>
          <tr>
            <th scope="col">Wearer</th>
            <th scope="col">Cast</th>
            {measurements && <th scope="col">Sheet</th>}
          </tr>
        </thead>
        <tbody>
          {garment.wearers.map((wearer, i) => (
            <tr key={`${wearer.cast} ${wearer.place} ${wearer.performer}`}>
              <th scope="row">
                {wearerName(wearer, staging)} <span className="units">{i === 0 ? "made for" : "fitted to"}</span>
              </th>
              <td>
                {wearer.cast}
                {wearer.standing === "cover" && <span className="units"> stands by</span>}
              </td>
              {measurements && <td className="q">{sheetWords(sheetOf(wearer, staging))}</td>}
            </tr>
          ))}
        </tbody>
      </table>
    )}
  </section>
);
