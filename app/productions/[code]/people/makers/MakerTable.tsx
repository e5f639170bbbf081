import Link from "next/link";
import { figures, Heads } from "../../../../_components/Heads";
import { Swatch } from "../../../../_components/Swatch";
import { Wide } from "../../../../_components/Wide";
import { makerHref } from "../../../../_data/address";
import styles from "./MakerTable.module.css";
import type { MakerRow } from "./makerRows";

/** Everybody in the workroom: what they can do, how much of their time is taken, when they are away. */
export const MakerTable = ({ rows, production }: { readonly rows: readonly MakerRow[]; readonly production: string }) => {
  if (rows.length === 0) return <p className="board">There is nobody in the workroom yet.</p>;
  return (
    <Wide label="Makers">
      <table className="stack">
        <caption>Hours are those of the next four weeks, at everybody&rsquo;s own pace.</caption>
        <Heads
          of={["Name", "Trade", "Skills, with a pace that is not the standard one", figures("A week"), figures("Planned, of free"), "Away"]}
        />
        <tbody>
          {rows.map((row) => (
            <tr key={row.code}>
              <th scope="row" className="name">
                <Link href={makerHref(production, row.code)} prefetch={false}>
                  {row.name}
                </Link>
              </th>
              <td>
                {row.trade} <span className="units">{row.employment}</span>
              </td>
              <td>
                <span className={styles.skills}>
                  {row.skills.map(({ skill, name }) => (
                    <span key={skill} className="nb">
                      <Swatch skill={skill} />
                      {name}
                    </span>
                  ))}
                </span>
              </td>
              <td className="num" data-label="a week">
                {row.week}
              </td>
              <td className={row.load?.over ? "num bad b" : "num"} data-label="planned">
                {row.load ? `${row.load.planned} of ${row.load.free}` : "not levelled"}
                {row.load?.over && " over"}
              </td>
              <td className="q">{row.away}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Wide>
  );
};
