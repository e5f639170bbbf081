import type { DriverValue, GarmentWork } from "#lib/breakdown/work";
import type { Production } from "#lib/staging/staging";
import { LENGTH_PER_YARD } from "#lib/units/quantities";
import { figures, Heads } from "../../../../_components/Heads";
import { OpenedLine } from "../../../../_components/OpenedLine";
import { capital } from "../../../../_data/plural";
import { showQuantity } from "../../../../_data/quantity";

/** Longer than this a length is said in yards or metres. */
const LONG = 3 * LENGTH_PER_YARD;

const value = (driver: DriverValue, production: Production): string => {
  if (driver.unit === "length") return showQuantity(driver.value, "length", production.lengths, driver.value <= LONG);
  return driver.value.toLocaleString("en-GB", { maximumFractionDigits: 2 });
};

/** What its time and cloth depend on, each figure with its arithmetic. */
export const Drivers = ({ work, production }: { readonly work: GarmentWork; readonly production: Production }) => (
  <section aria-labelledby="drivers">
    <h2 id="drivers">How it is made</h2>
    <p className="cap">
      What its hours and its cloth are counted from. <span className="no-print">Open a line for the arithmetic.</span>
    </p>
    <table>
      <Heads of={["Counted", figures("Comes to")]} />
      {work.drivers.map((driver) => (
        <OpenedLine
          key={driver.code}
          name={capital(driver.label[production.words])}
          columns={2}
          cells={<td className="num b fr">{value(driver, production)}</td>}
        >
          {driver.arithmetic}
        </OpenedLine>
      ))}
    </table>
  </section>
);
