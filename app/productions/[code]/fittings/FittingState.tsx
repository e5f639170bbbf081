import { showDay } from "#lib/calendar/showDay";
import type { FittingAnswer } from "#lib/fittings/answer";
import type { KeptAnswer } from "#prisma/fittings/answers";
import { State, type StateCode } from "../../../_components/State";
import type { SeenFitting } from "./fittingsView";

const MARKS: Readonly<Record<FittingAnswer, StateCode>> = { done: "done", "did not come": "late", again: "alter" };

/** How a fitting went, and when. */
export const Answered = ({ answer: { answer, on } }: { readonly answer: Pick<KeptAnswer, "answer" | "on"> }) => (
  <State code={MARKS[answer]}>
    {answer}, {showDay(on)}
  </State>
);

/** How a fitting stands: answered, without a time, clashing, before its work is done, or to be held. */
export const FittingState = ({ fitting: { answer, clashes, missing, start } }: { readonly fitting: SeenFitting }) => {
  if (answer) return <Answered answer={answer} />;
  if (start === null) return <State code="late">no time</State>;
  if (clashes.length > 0) return <State code="late">clashes: {clashes.join(", ")}</State>;
  if (missing.work.some(({ end }) => end === null || end > start)) return <State code="wait">not ready for it</State>;
  return <State code="fit">to be held</State>;
};
