import type { Garment } from "#lib/casting/wardrobe";
import type { Staging } from "#lib/staging/staging";
import { Heads } from "../../../../../_components/Heads";
import { Woven } from "../../../../../_components/Woven";
import { garmentHref } from "../../../../../_data/address";
import { nameOfRole } from "../../../../../_data/names";

/** What a performer wears, and whether it is made for them or fitted to them. */
export const Worn = ({
  garments,
  staging,
  performer,
}: {
  readonly garments: readonly Garment[];
  readonly staging: Staging;
  readonly performer: string;
}) => {
  const worn = garments.flatMap((garment) => {
    const at = garment.wearers.findIndex((wearer) => wearer.performer === performer);
    return at < 0 ? [] : [{ garment, first: at === 0, standing: garment.wearers[at]!.standing }];
  });
  return (
    <section className="part" aria-labelledby="worn">
      <header>
        <h2 id="worn">Wears</h2>
      </header>
      {worn.length === 0 ? (
        <p className="q">Nothing: not cast, and nobody's cover.</p>
      ) : (
        <table className="stack">
          <Heads of={["Number", "Garment", "Role", "How"]} />
          <tbody>
            {worn.map(({ garment, first, standing }) => (
              <tr key={garment.number}>
                <td>
                  <Woven number={garment.number} href={garmentHref(staging.production.code, garment.number)} />
                </td>
                <td className="name b">{garment.name}</td>
                <td>{nameOfRole(staging, garment.role)}</td>
                <td className="q">
                  {first ? "made for" : "fitted to"}
                  {standing === "cover" && ", stands by"}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
};
