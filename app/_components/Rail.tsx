import Link from "next/link";

export interface Room {
  readonly href: string;
  readonly name: string;
  /** Hangs at the far end. */
  readonly end?: boolean;
}

/** The rooms, hanging from a rail; the one we stand in is a swing ticket. */
export const Rail = ({ rooms, room }: { readonly rooms: readonly Room[]; readonly room: string }) => (
  <nav className="rail" aria-label="Rooms">
    {rooms.map((each) => (
      <Link
        key={each.href}
        href={each.href}
        prefetch={false}
        className={each.end ? "end" : undefined}
        aria-current={each.href === room ? "page" : undefined}
      >
        {each.name}
      </Link>
    ))}
  </nav>
);
