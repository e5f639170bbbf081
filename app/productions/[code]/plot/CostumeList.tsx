import type { GarmentWork } from "#lib/breakdown/work";
import type { Garment } from "#lib/casting/wardrobe";
import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { figures, Heads } from "../../../_components/Heads";
import { nameOfRole } from "../../../_data/names";
import { plural } from "../../../_data/plural";
import { costumeHref } from "./plotWords";

/** Every costume, with its pieces and what they come to. */
export const CostumeList = ({
  staging,
  works,
  garments,
  base,
}: {
  readonly staging: Staging;
  readonly works: readonly GarmentWork[];
  readonly garments: readonly Garment[];
  readonly base: string;
}) => {
  const minutes = new Map(works.map(({ garment, operations }) => [garment, operations.reduce((sum, one) => sum + one.minutes[1], 0)]));
  return (
    <section className="part" aria-labelledby="costumes">
      <header>
        <h2 id="costumes">Costumes</h2>
      </header>
      <table className="stack">
        <Heads of={["Costume", "Role", "Pieces", figures("Garments"), figures("Work")]} />
        <tbody>
          {staging.costumes.map((costume) => {
            const own = garments.filter((garment) => garment.costume === costume.code);
            const work = own.reduce((sum, { number }) => sum + (minutes.get(number) ?? 0), 0);
            return (
              <tr key={costume.code}>
                <th scope="row" className="name b">
                  <a href={costumeHref(base, costume.code)}>{costume.name}</a>
                </th>
                <td>{nameOfRole(staging, costume.role)}</td>
                <td className="q">
                  {staging.pieces
                    .filter((piece) => piece.costume === costume.code)
                    .map(({ name }) => name)
                    .join(", ") || "no piece yet"}
                </td>
                <td className="num" data-label="garments">
                  {own.length}
                </td>
                <td className="num" data-label="work">
                  {work > 0 && showHours(work)}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <p className="cap">{plural(garments.length, "garment")} in all. Work is standard work, before batches.</p>
    </section>
  );
};
