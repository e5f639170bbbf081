import type { CastCell } from "#lib/casting/castCell";

/** What a reader asked to see: kept in the address. */
export interface GridAsked {
  /** Roles that are shown place by place. */
  readonly open: readonly string[];
  /** A cast that nobody is in yet. */
  readonly further: string;
  /** Who stands by in every cast. */
  readonly covers: boolean;
}

/** Reads what was asked for from the address; what cannot be read is as if it were not there. */
export const readAsked = (given: Readonly<Record<string, string | readonly string[] | undefined>>): GridAsked => {
  const text = (name: string) => [given[name] ?? ""].flat().at(-1) ?? "";
  return {
    open: text("open")
      .split(",")
      .filter((role) => role !== ""),
    further: text("cast").trim().slice(0, 60),
    covers: text("covers") === "all",
  };
};

export const writeAsked = ({ open, further, covers }: GridAsked): string => {
  const query = new URLSearchParams();
  if (open.length > 0) query.set("open", open.join(","));
  if (further !== "") query.set("cast", further);
  if (covers) query.set("covers", "all");
  const text = query.toString();
  return text && `?${text}`;
};

/** The page with the places of one role opened. */
export const foldHref = (base: string, asked: GridAsked, role: string): string =>
  base + writeAsked({ ...asked, open: [...new Set([...asked.open, role])] });

/** The page of one cell. */
export const cellHref = (base: string, { cast, role, place, standing }: CastCell): string =>
  `${base}/cell?${new URLSearchParams({ role, place: String(place), cast, standing })}`;
