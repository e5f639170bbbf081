import type { GarmentWork } from "#lib/breakdown/work";
import type { Construction } from "#lib/constructions/construction";
import type { Production } from "#lib/staging/staging";
import { figures, Heads } from "../../../../_components/Heads";
import { Wide } from "../../../../_components/Wide";
import { showQuantity } from "../../../../_data/quantity";

/** The quantities that hours and cloth depend on: how each is worked out, and what it comes to for the median body. */
export const Drivers = ({
  construction,
  work,
  production,
}: {
  readonly construction: Construction;
  readonly work: GarmentWork;
  readonly production: Production;
}) =>
  construction.drivers.length > 0 && (
    <section className="part" aria-labelledby="drivers">
      <header>
        <h2 id="drivers">What is counted</h2>
        <span className="small q">For the body the figures were set for.</span>
      </header>
      <Wide label="What is counted">
        <table>
          <Heads of={["Quantity", "In formulas", "Formula", figures("Comes to")]} />
          <tbody>
            {construction.drivers.map(({ code, label, formula, unit }) => {
              const value = work.drivers.find((driver) => driver.code === code)?.value;
              return (
                <tr key={code}>
                  <th scope="row">{label[production.words]}</th>
                  <td className="q">{code}</td>
                  <td>{formula}</td>
                  <td className="num b fr">
                    {value === undefined
                      ? ""
                      : unit === "ratio"
                        ? value
                        : showQuantity(value, unit === "length" ? "length" : "count", production.lengths, true)}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </Wide>
    </section>
  );
