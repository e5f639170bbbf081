import Link from "next/link";
import type { Garment } from "#lib/casting/wardrobe";
import type { Staging } from "#lib/staging/staging";
import { garmentHref } from "../../../../_data/address";
import { plural } from "../../../../_data/plural";

/** The garments of this production that are made by it. */
export const UsedBy = ({ garments, staging }: { readonly garments: readonly Garment[]; readonly staging: Staging }) => (
  <section className="part" aria-labelledby="used">
    <header>
      <h2 id="used">Made so</h2>
      <span className="small q">
        {garments.length === 0 ? "No garment of this production." : `${plural(garments.length, "garment")} of this production.`}
      </span>
    </header>
    {garments.length > 0 && (
      <ul className="lines">
        {garments.map(({ number, name, version }) => (
          <li key={number}>
            <Link href={garmentHref(staging.production.code, number)} prefetch={false}>
              {number}
            </Link>{" "}
            {name}
            {version !== null && <span className="q"> (kept at version {version})</span>}
          </li>
        ))}
      </ul>
    )}
  </section>
);
