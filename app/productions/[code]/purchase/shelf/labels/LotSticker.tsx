import type { Production } from "#lib/staging/staging";
import type { ShelfEntry } from "#prisma/stock/shelf";
import { SquareCode } from "../../../../../_components/SquareCode";
import { colourBeside } from "../../../../../_data/colourBeside";
import { showQuantity } from "../../../../../_data/quantity";
import { lotHref } from "../lotHref";
import styles from "./Labels.module.css";

/** What is stuck to a roll or a box: its code, what it is, and a square code that opens its page. */
export const LotSticker = ({
  lot,
  production,
  host,
}: {
  readonly lot: ShelfEntry;
  readonly production: Production;
  /** Where the pages are served from. */
  readonly host: string;
}) => (
  <li className={styles.label}>
    <SquareCode address={host + lotHref(production.code, lot.code)} label={`Square code of lot ${lot.code}`} />
    <div>
      <p className={styles.code}>{lot.code}</p>
      <p className={styles.name}>{[lot.name, colourBeside(lot.name, lot.colour)].filter(Boolean).join(", ")}</p>
      <p>
        {lot.dyeLot && `dye lot ${lot.dyeLot}; `}
        {showQuantity(lot.balance.onHand, lot.measure, production.lengths)}
        {lot.breadth !== null && `, ${showQuantity(lot.breadth, "length", production.lengths, true)} broad`}
      </p>
      <p>{lot.parent ? `off-cut of ${lot.parent}` : lot.location}</p>
    </div>
  </li>
);
