import Link from "next/link";

/** The woven label: a garment's number, everywhere; it leads to the garment when `href` is given. */
export const Woven = ({ number, href, big = false }: { readonly number: string; readonly href?: string; readonly big?: boolean }) => {
  const className = big ? "woven big" : "woven";
  return href === undefined ? (
    <span className={className}>{number}</span>
  ) : (
    <Link className={className} href={href} prefetch={false}>
      {number}
    </Link>
  );
};
