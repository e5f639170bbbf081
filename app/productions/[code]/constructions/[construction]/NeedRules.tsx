import type { GarmentWork } from "#lib/breakdown/work";
import type { Construction } from "#lib/constructions/construction";
import type { Staging } from "#lib/staging/staging";
import { figures, Heads } from "../../../../_components/Heads";
import { OpenedLine } from "../../../../_components/OpenedLine";
import { nameOfMaterial } from "../../../../_data/names";
import { showQuantity } from "../../../../_data/quantity";

/** The cloth and notions it asks for, for the median body, before waste and spare. */
export const NeedRules = ({
  construction,
  work,
  staging,
}: {
  readonly construction: Construction;
  readonly work: GarmentWork;
  readonly staging: Staging;
}) => {
  const { words, lengths } = staging.production;
  return (
    construction.needs.length > 0 && (
      <section className="part" aria-labelledby="needs">
        <header>
          <h2 id="needs">Needs</h2>
        </header>
        <table>
          <Heads of={["For", "Material, unless a piece names another", figures("Needs")]} />
          {construction.needs.map((rule) => {
            const need = work.needs.find(({ role }) => role === rule.role);
            return (
              <OpenedLine
                key={rule.role}
                name={rule.label[words]}
                columns={3}
                cells={
                  <>
                    <td>{rule.material === "" ? "the piece must name it" : nameOfMaterial(staging, rule.material)}</td>
                    <td className="num b fr">{need ? showQuantity(need.quantity, need.measure, lengths) : "not always"}</td>
                  </>
                }
              >
                {need?.arithmetic ?? `Only when ${rule.when}.`}
              </OpenedLine>
            );
          })}
        </table>
      </section>
    )
  );
};
