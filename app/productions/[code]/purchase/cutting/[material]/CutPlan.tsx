import type { CuttingPlan } from "#lib/cutting/cuttingPlan";
import type { MaterialKind } from "#lib/materials/material";
import type { LengthSystem } from "#lib/units/showLength";
import { figures, Heads } from "../../../../../_components/Heads";
import { Wide } from "../../../../../_components/Wide";
import { numberRanges, rangeText } from "../../../../../_data/numberRanges";
import { plural } from "../../../../../_data/plural";
import { showQuantity } from "../../../../../_data/quantity";
import { CuttingPicture } from "../CuttingPicture";
import styles from "../CuttingPicture.module.css";
import { alikePatterns, pieceRows } from "../cuttingRows";
import { proofWords, stockWord } from "../proofWords";

/** Patterns drawn on one page; the table has every piece of all. */
const MOST = 30;

/** One cutting plan: the picture of each way a stock is cut, and the table of pieces behind it. */
export const CutPlan = ({
  plan,
  lengths,
  kind,
  id,
}: {
  readonly plan: CuttingPlan;
  readonly lengths: LengthSystem;
  readonly kind: MaterialKind | undefined;
  readonly id: string;
}) => {
  const show = (length: number) => showQuantity(length, "length", lengths, true);
  const patterns = alikePatterns(plan);
  const rows = pieceRows(plan);
  return (
    <section className="part" aria-labelledby={id}>
      <header>
        <h2 id={id}>
          {plan.lot === null ? "From what is bought" : `From lot ${plan.lot}`}
          {plan.set && `, ${plan.set}`}
        </h2>
        <span className="cap">
          {plan.stock === null
            ? `one length of ${showQuantity(plan.used, "length", lengths)}`
            : `${plural(plan.count, stockWord(kind), kind && stockWord(kind) === "roll" ? "rolls" : "rods or coils")} of ${showQuantity(plan.stock, "length", lengths)}`}
          . {proofWords(plan, lengths, kind)}
          {plan.kerf > 0 && ` ${show(plan.kerf)} is lost at each cut.`}
        </span>
      </header>
      {patterns.slice(0, MOST).map(({ pattern, times, garments }) => (
        <figure key={JSON.stringify(pattern.pieces)} className={styles.figure}>
          <figcaption className="small">
            {times > 1 && <b>{times} times. </b>}
            {plan.cuttable === null && <span className="q">{numberRanges(garments).map(rangeText).join(", ")}</span>}
          </figcaption>
          <Wide label="Cutting plan" fit>
            <CuttingPicture plan={plan} pattern={pattern} lengths={lengths} />
          </Wide>
        </figure>
      ))}
      {patterns.length > MOST && (
        <p className="cap">
          The first {MOST} of {patterns.length} patterns are drawn; the table has every piece.
        </p>
      )}
      <table className="stack">
        <Heads of={["Piece", figures("Long"), figures("Broad"), figures("How many"), "For"]} />
        <tbody>
          {rows.map((row) => (
            <tr key={`${row.label} ${row.length} ${row.breadth}`}>
              <th scope="row" className="name">
                {row.label}
              </th>
              <td className="num fr">{show(row.length)}</td>
              <td className="num fr" data-label="broad">
                {row.breadth !== null && show(row.breadth)}
              </td>
              <td className="num b">{row.count}</td>
              <td className="small">{numberRanges(row.garments).map(rangeText).join(", ")}</td>
            </tr>
          ))}
          <tr className="sum">
            <td>All</td>
            <td colSpan={2} />
            <td className="num">{rows.reduce((sum, { count }) => sum + count, 0)}</td>
            <td />
          </tr>
        </tbody>
      </table>
    </section>
  );
};
