import Link from "next/link";

/** The mark of the house: a skirt seen from the side. */
export const Mark = () => (
  <Link className="mark" href="/">
    <svg width="30" height="20" viewBox="0 0 30 20" aria-hidden="true">
      <path
        d="M1 6.5C9 4 21 4 29 6.5M4 9.5C11 7.5 19 7.5 26 9.5M7 12.5C12 11 18 11 23 12.5M10 15.5C13 14.6 17 14.6 20 15.5M12.6 5c.4-2 .9-3 1-4.5M17.4 5c-.4-2-.9-3-1-4.5"
        fill="none"
        stroke="currentColor"
        strokeWidth="1.7"
        strokeLinecap="round"
      />
    </svg>
    Tarlatan
  </Link>
);
