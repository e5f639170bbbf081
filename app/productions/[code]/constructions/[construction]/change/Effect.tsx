import type { DraftEffect } from "./draftState";

const Moved = ({ pair: [before, after] }: { readonly pair: readonly [string, string] }) =>
  before === after ? (
    <b>{before}</b>
  ) : (
    <>
      {before}, then <b>{after}</b>
    </>
  );

/** What the draft would do, said in one breath. */
export const Effect = ({ effect: { one, cost, all, changed, unchanged, materials } }: { readonly effect: DraftEffect }) => (
  <p role="status">
    One garment: <Moved pair={one} />
    {cost && (
      <>
        , labour <Moved pair={cost} />
      </>
    )}
    . {changed === 0 && (unchanged === 0 ? "No garment of this production is made so." : `None of its ${unchanged} garments would change.`)}
    {changed > 0 && (
      <>
        {changed} of {changed + unchanged} garments would change: <Moved pair={all} />
        {materials.map(({ name, before, after }) => (
          <span key={name}>
            ; {name} {before}, then <b>{after}</b>
          </span>
        ))}
        .
      </>
    )}
  </p>
);
