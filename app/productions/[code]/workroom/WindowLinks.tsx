import Link from "next/link";
import { showDay } from "#lib/calendar/showDay";
import type { Window } from "./window";

/** To the weeks before and after those drawn. */
export const WindowLinks = ({ href, window: { from, to, earlier, later } }: { readonly href: string; readonly window: Window }) => (
  <p className="acts no-print">
    {earlier && (
      <Link className="press second" href={`${href}?from=${earlier}`}>
        Earlier weeks
      </Link>
    )}{" "}
    <span className="small q">
      {showDay(from)} to {showDay(to)}
    </span>{" "}
    {later && (
      <Link className="press second" href={`${href}?from=${later}`}>
        Later weeks
      </Link>
    )}
  </p>
);
