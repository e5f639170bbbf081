import type { GarmentWork, Need } from "#lib/breakdown/work";
import type { Staging } from "#lib/staging/staging";
import { figures, Heads } from "../../../../_components/Heads";
import { OpenedLine } from "../../../../_components/OpenedLine";
import { nameOfMaterial } from "../../../../_data/names";
import { showQuantity } from "../../../../_data/quantity";

const cuts = (need: Need, staging: Staging): string =>
  need.cuts.length === 0
    ? ""
    : `\nCut as ${need.cuts.map((cut) => `${cut.count} × ${cut.label} of ${showQuantity(cut.length, "length", staging.production.lengths, true)}`).join("; ")}.`;

/** The cloth and notions it needs, before waste and spare. */
export const Needs = ({ work, staging }: { readonly work: GarmentWork; readonly staging: Staging }) => (
  <section className="part" aria-labelledby="needs">
    <header>
      <h2 id="needs">Needs</h2>
    </header>
    <table>
      <Heads of={["For", "Material", figures("Needs")]} />
      {work.needs.map((need) => (
        <OpenedLine
          key={`${need.role} ${need.material} ${need.operation}`}
          name={need.label[staging.production.words]}
          columns={3}
          cells={
            <>
              <td>{nameOfMaterial(staging, need.material)}</td>
              <td className="num b fr">{showQuantity(need.quantity, need.measure, staging.production.lengths)}</td>
            </>
          }
        >
          {need.arithmetic}
          {cuts(need, staging)}
        </OpenedLine>
      ))}
    </table>
  </section>
);
