import { showDate } from "#lib/calendar/showDay";
import type { DyePage } from "#prisma/stock/dyeBook";
import { buyingHref } from "../buyingPages";
import { LotLabel } from "../shelf/LotLabel";
import styles from "./DyePages.module.css";

/** The pages of the dye book, the newest first, each with its swatch. */
export const DyePages = ({ pages, code }: { readonly pages: readonly DyePage[]; readonly code: string }) => (
  <section className="part" aria-label="Pages">
    {pages.length === 0 && <p className="board">No colour has been written down yet.</p>}
    <ul className={styles.pages}>
      {pages.map((page) => (
        <li key={page.code} className={styles.page}>
          {page.hasSwatch ? (
            // biome-ignore lint/performance/noImgElement: a photograph behind the gate, shown as it was taken.
            <img src={`${buyingHref(code, "/dyes")}/${page.code}/swatch`} alt={`Swatch of ${page.colour}`} className={styles.swatch} />
          ) : (
            <div className={styles.swatch}>
              <span className="cap">pin the swatch here</span>
            </div>
          )}
          <div>
            <h2>
              {page.colour}, {page.materialName}
            </h2>
            <p className="cap">
              {showDate(page.dyedOn)}
              {page.by && `, ${page.by}`}
              {page.production && `, ${page.production}`}
              {page.garments.length > 0 && `; ${page.garments.join(", ")}`}
            </p>
            {page.lot && (
              <p className="small">
                From <LotLabel code={code} lot={page.lot} />
              </p>
            )}
            <p className="pre">{page.recipe}</p>
            {page.cautions && <p className="pre small b">Take care: {page.cautions}</p>}
          </div>
        </li>
      ))}
    </ul>
  </section>
);
