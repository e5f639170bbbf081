import Link from "next/link";
import type { Room } from "./Rail";
import styles from "./SubRail.module.css";

/** The pages of a room, under the rail; the one we stand on is underlined in ink. */
export const SubRail = ({ label, pages, page }: { readonly label: string; readonly pages: readonly Room[]; readonly page: string }) => (
  <nav className={styles.pages} aria-label={label}>
    {pages.map(({ href, name }) => (
      <Link key={href} href={href} prefetch={false} aria-current={href === page ? "page" : undefined}>
        {name}
      </Link>
    ))}
  </nav>
);
