import Link from "next/link";
import type { Production } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { constructionHref } from "../../../_data/address";
import { showQuantity } from "../../../_data/quantity";
import type { ConstructionRow } from "./constructionRows";

/** One line a construction; its name leads to it. */
export const ConstructionLines = ({ rows, production }: { readonly rows: readonly ConstructionRow[]; readonly production: Production }) => (
  <tbody>
    {rows.map((row) => (
      <tr key={row.code}>
        <th scope="row" className="name">
          <Link href={constructionHref(production.code, row.code)} prefetch={false}>
            {row.name[production.words]}
          </Link>
        </th>
        <td data-label="Version">{row.versions.at(-1)}</td>
        <td className="num" data-label="So made">
          {row.garments || <span className="q">none here</span>}
        </td>
        <td className="num b" data-label="Likely">
          {showHours(row.minutes[1])}
        </td>
        <td className="num q" data-label="Low to high">
          {showHours(row.minutes[0])} to {showHours(row.minutes[2])}
        </td>
        <td className="num" data-label="Tasks">
          {row.tasks}
        </td>
        <td data-label="Net">{row.net > 0 ? showQuantity(row.net, "length", production.lengths) : ""}</td>
      </tr>
    ))}
  </tbody>
);
