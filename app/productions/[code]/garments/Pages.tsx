import Link from "next/link";
import { type GarmentQuery, writeQuery } from "./garmentQuery";
import type { GarmentPage } from "./selectGarments";

/** From one page of a long list to the next. */
export const Pages = ({
  base,
  query,
  page: { page, pages, from, rows },
  found,
}: {
  readonly base: string;
  readonly query: GarmentQuery;
  readonly page: GarmentPage;
  readonly found: number;
}) => {
  if (pages === 1) return null;
  const to = (number: number, words: string) => (
    <Link className="press second" href={`${base}/garments${writeQuery({ ...query, page: number })}`} prefetch={false}>
      {words}
    </Link>
  );
  return (
    <nav className="part no-print" aria-label="Pages of the list">
      <p className="acts">
        {page > 1 && to(page - 1, `Before ${from}`)}
        <span className="q small">
          {from} to {from + rows.length - 1} of {found}
        </span>
        {page < pages && to(page + 1, `After ${from + rows.length - 1}`)}
      </p>
    </nav>
  );
};
