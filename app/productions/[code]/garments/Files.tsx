import styles from "./FindBar.module.css";
import { type GarmentQuery, writeQuery } from "./garmentQuery";

/** How many the list shows, and the list as a file: the same rows, columns and order. */
export const Files = ({
  base,
  query,
  found,
  of,
}: {
  readonly base: string;
  readonly query: GarmentQuery;
  readonly found: number;
  readonly of: number;
}) => {
  const asked = writeQuery({ ...query, page: 1 });
  return (
    <>
      <p role="status" className={`${styles.count} q small`}>
        {found === of ? `all ${of}` : `${found} of ${of}`}
      </p>
      <span className={styles.files}>
        <a className="press second" href={`${base}/garments.csv${asked}`} download>
          Save this list
        </a>
        <a className="press second" href={`${base}/garments.xlsx${asked}`} download>
          As a workbook
        </a>
      </span>
    </>
  );
};
