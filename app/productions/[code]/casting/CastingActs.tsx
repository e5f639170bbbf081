import type { GridAsked } from "./gridLinks";
import { writeAsked } from "./gridLinks";

/** Presses above the grid: a further cast, places of a role from a list, who stands by in every cast. */
export const CastingActs = ({ base, asked }: { readonly base: string; readonly asked: GridAsked }) => (
  <div className="acts">
    <form action={base} method="get" className="acts">
      <label className="unseen" htmlFor="new-cast">
        Name of a further cast
      </label>
      <input id="new-cast" name="cast" placeholder="third" size={8} required maxLength={60} defaultValue={asked.further} />
      <button type="submit" className="press second">
        Add a cast
      </button>
    </form>
    <a className="press second" href={`${base}/places`}>
      Fill places from a list
    </a>
    <a className="press second" href={base + writeAsked({ ...asked, covers: !asked.covers })}>
      {asked.covers ? "Fewer stand by" : "Stand by in every cast"}
    </a>
  </div>
);
