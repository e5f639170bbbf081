import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { PlanMoves } from "#lib/whatif/planMoves";
import { MovedLines } from "../../../../_components/MovedLines";
import { movesSentence } from "../../../../_data/movesSentence";

/** What moves when the wish is granted, before anything is kept. */
export const WhatFollows = ({
  moves,
  after,
  movedKey,
  children,
}: {
  readonly moves: PlanMoves;
  readonly after: StagingPlan;
  readonly movedKey: string;
  /** The press that keeps it. */
  readonly children: React.ReactNode;
}) => {
  const others = moves.moved.filter(({ key }) => key !== movedKey);
  return (
    <section className="part" aria-labelledby="follows">
      <header>
        <h2 id="follows">What follows</h2>
      </header>
      <p role="status">{movesSentence(moves, others.length)}</p>
      {children}
      {others.length > 0 && <MovedLines moves={others} staging={after.staging} />}
    </section>
  );
};
