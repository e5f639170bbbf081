import { plural } from "../../../_data/plural";
import styles from "./ChosenBar.module.css";
import { type GarmentQuery, writeQuery } from "./garmentQuery";

/** An address holds so many numbers; more are reached by the search that finds them. */
const MOST = 300;

/** What can be done with the rows chosen, or with all that the search finds. Before scripts load it goes by the boxes ticked. */
export const ChosenBar = ({
  base,
  canChange,
  query,
  found,
  chosen,
  shown,
  none,
}: {
  readonly base: string;
  readonly canChange: boolean;
  readonly query: GarmentQuery;
  readonly found: number;
  readonly chosen: readonly string[];
  /** Rows on this page: their boxes speak for themselves. */
  readonly shown: readonly string[];
  readonly none: () => void;
}) => {
  const asked = writeQuery({ ...query, page: 1 });
  const all = `${asked || "?"}${asked && "&"}all=1`;
  return (
    <form id="chosen" method="get" action={`${base}/tickets`} className={`${styles.bar} ${chosen.length > 0 ? styles.held : ""} no-print`}>
      {chosen
        .filter((number) => !shown.includes(number))
        .map((number) => (
          <input key={number} type="hidden" name="number" value={number} />
        ))}
      <p role="status">
        {chosen.length > 0 ? <b>{plural(chosen.length, "garment")} chosen</b> : <span className="q">With those ticked</span>}
      </p>
      {chosen.length > MOST ? (
        <p className="q small">No more than {MOST} are taken by hand: search for them instead.</p>
      ) : (
        <>
          {canChange && (
            <button type="submit" className="press second" formAction={`${base}/garments/change`}>
              Change
            </button>
          )}
          <button type="submit" className="press second">
            Print tickets
          </button>
        </>
      )}
      {chosen.length > 0 && (
        <button type="button" className="plain" onClick={none}>
          None
        </button>
      )}
      {found > 0 && (
        <p className={`${styles.all} q small`}>
          All {found} found: {canChange && <a href={`${base}/garments/change${all}`}>change them</a>}
          {canChange && ", "}
          <a href={`${base}/tickets${all}`}>print their tickets</a>
        </p>
      )}
    </form>
  );
};
