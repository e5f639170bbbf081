import styles from "./FindBar.module.css";
import { COLUMNS } from "./garmentColumns";
import { FACET_IDS, FACETS, type FacetId, type GarmentQuery, writeSort } from "./garmentQuery";

const STATES = [
  ["", "every garment"],
  ["late", "late"],
  ["unplaced", "no place in the plan"],
  ["ready", "in time"],
  ["unlevelled", "nothing planned"],
] as const;

/** One press of the list: `query` is what it asks for. */
export type Ask = (form: HTMLFormElement, submitter?: HTMLElement | null) => void;

/**
 * Search, order and columns of the list. It is a plain form, so that it works before scripts load; then each change asks at once.
 */
export const FindBar = ({
  id,
  query,
  facets,
  ask,
  children,
}: {
  readonly id: string;
  readonly query: GarmentQuery;
  readonly facets: Readonly<Record<FacetId, readonly string[]>>;
  readonly ask: Ask;
  /** What stands at the end: how many there are, files. */
  readonly children: React.ReactNode;
}) => (
  <form
    id={id}
    method="get"
    className={`${styles.bar} no-print`}
    onSubmit={(event) => {
      event.preventDefault();
      ask(event.currentTarget, (event.nativeEvent as SubmitEvent).submitter);
    }}
    onChange={(event) => ask(event.currentTarget)}
  >
    <label>
      Find
      <input type="search" name="find" placeholder="garment, role, wearer" defaultValue={query.find} />
    </label>
    <label>
      Show
      <select name="state" defaultValue={query.state}>
        {STATES.map(([code, label]) => (
          <option key={code} value={code}>
            {label}
          </option>
        ))}
      </select>
    </label>
    <label>
      Group by
      <select name="group" defaultValue={query.group}>
        <option value="">nothing</option>
        {FACET_IDS.map((facet) => (
          <option key={facet} value={facet}>
            {FACETS[facet].toLowerCase()}
          </option>
        ))}
        <option value="state">state</option>
      </select>
    </label>
    <details className={styles.fold} open={Object.keys(query.only).length > 0}>
      <summary>Only</summary>
      <div>
        {FACET_IDS.map((facet) => (
          <label key={facet}>
            {FACETS[facet]}
            <select name={facet} defaultValue={query.only[facet] ?? ""}>
              <option value="">any</option>
              {facets[facet].map((value) => (
                <option key={value}>{value}</option>
              ))}
            </select>
          </label>
        ))}
      </div>
    </details>
    <details className={styles.fold}>
      <summary>Columns</summary>
      <div>
        {COLUMNS.map((column) => (
          <label key={column.id}>
            <input type="checkbox" name="show" value={column.id} defaultChecked={query.show.includes(column.id)} />
            {column.label}
          </label>
        ))}
      </div>
    </details>
    <input type="hidden" name="sort" value={writeSort(query.sort, query.down)} />
    <noscript>
      <button type="submit" className="press second">
        Find
      </button>
    </noscript>
    {children}
  </form>
);
