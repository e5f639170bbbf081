import styles from "./FindBar.module.css";
import { type GarmentQuery, writeSort } from "./garmentQuery";
import type { GarmentStateCode } from "./garmentRow";

const STATES: readonly (readonly [GarmentStateCode | "", string])[] = [
  ["", "every garment"],
  ["late", "late"],
  ["unplaced", "no place in the plan"],
  ["ready", "in time"],
  ["unlevelled", "nothing planned"],
];

/** Search and state above the list; how many are shown; the list as a file. */
export const FindBar = ({
  id,
  query,
  onChange,
  found,
  of,
  save,
}: {
  readonly id: string;
  readonly query: GarmentQuery;
  readonly onChange: (query: GarmentQuery) => void;
  readonly found: number;
  readonly of: number;
  readonly save: string;
}) => (
  <form id={id} method="get" className={`${styles.bar} no-print`} onSubmit={(event) => event.preventDefault()}>
    <label>
      Find
      <input
        type="search"
        name="find"
        placeholder="garment, role, wearer"
        value={query.find}
        onChange={(event) => onChange({ ...query, find: event.target.value })}
      />
    </label>
    <label>
      Show
      <select
        name="state"
        value={query.state}
        onChange={(event) => onChange({ ...query, state: STATES.find(([code]) => code === event.target.value)?.[0] ?? "" })}
      >
        {STATES.map(([code, label]) => (
          <option key={code} value={code}>
            {label}
          </option>
        ))}
      </select>
    </label>
    <input type="hidden" name="sort" value={writeSort(query.sort, query.down)} />
    <noscript>
      <button type="submit" className="press second">
        Find
      </button>
    </noscript>
    <p role="status" className="q small">
      {found === of ? `all ${of}` : `${found} of ${of}`}
    </p>
    <a className="press second" href={save} download>
      Save this list
    </a>
  </form>
);
