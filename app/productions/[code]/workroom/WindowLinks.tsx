import Link from "next/link";
import { showDay } from "#lib/calendar/showDay";
import { type Window, ZOOMS, type Zoom } from "./window";

const WORDS: Readonly<Record<Zoom, string>> = { week: "A week", fortnight: "A fortnight", "six weeks": "Six weeks", all: "All of it" };

/** To the weeks before and after those drawn, and how many are drawn at once. */
export const WindowLinks = ({ href, window }: { readonly href: string; readonly window: Window }) => {
  const { from, to, earlier, later, zoom } = window;
  const at = (monday: string, weeks: Zoom) => `${href}?${new URLSearchParams({ from: monday, weeks })}`;
  return (
    <nav className="acts no-print" aria-label="Weeks drawn">
      {earlier && (
        <Link className="press second" href={at(earlier, zoom)}>
          Earlier weeks
        </Link>
      )}{" "}
      <span className="small q">
        {showDay(from)} to {showDay(to)}
      </span>{" "}
      {later && (
        <Link className="press second" href={at(later, zoom)}>
          Later weeks
        </Link>
      )}
      {ZOOMS.map((one) => (
        <Link key={one} className="plain" href={at(from, one)} aria-current={one === zoom ? "true" : undefined} prefetch={false}>
          {WORDS[one]}
        </Link>
      ))}
    </nav>
  );
};
