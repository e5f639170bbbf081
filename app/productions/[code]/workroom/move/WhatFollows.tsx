import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { PlanMoves } from "#lib/whatif/planMoves";
import { MovedLines } from "../../../../_components/MovedLines";
import { movesSentence } from "../../../../_data/movesSentence";

/** What moves when the wish is granted, before anything is kept. */
export const WhatFollows = ({
  moves,
  after,
  movedKey,
}: {
  readonly moves: PlanMoves;
  readonly after: StagingPlan;
  readonly movedKey: string;
}) => {
  const others = moves.moved.filter(({ key }) => key !== movedKey);
  return (
    <section className="part" aria-labelledby="follows">
      <header>
        <h2 id="follows">What follows</h2>
      </header>
      <p role="status">{movesSentence(moves, others.length)}</p>
      {others.length > 0 && <MovedLines moves={others} staging={after.staging} />}
    </section>
  );
};
