import { showDay } from "#lib/calendar/showDay";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import { State } from "../../_components/State";
import { Woven } from "../../_components/Woven";
import { garmentHref } from "../../_data/address";
import { lateWords } from "../../_data/lateWords";
import { dayOfFinish } from "../../_data/showDates";

/** Garments that come late, the latest first, each with its reasons in words. */
export const LateList = ({ plan }: { readonly plan: StagingPlan }) => {
  const late = plan.garmentStates
    .filter((state) => state.minutesLate > 0)
    .toSorted((a, b) => b.minutesLate - a.minutesLate || a.garment.localeCompare(b.garment));
  if (late.length === 0) return <p className="q">Every garment that is placed is ready for its day.</p>;
  return (
    <ul className="lines">
      {late.map((state) => {
        const garment = plan.garments.find((each) => each.number === state.garment);
        return (
          <li key={state.garment}>
            <p>
              <Woven number={state.garment} href={garmentHref(plan.staging.production.code, state.garment)} /> <b>{garment?.name}</b>
            </p>
            <p>
              <State code="late">{lateWords(state, plan.staging)}</State>
              {state.finish !== null && <span className="units"> ready {showDay(dayOfFinish(state.finish))}</span>}
            </p>
            {state.why.map((why) => (
              <p key={why} className="small q">
                {why}
              </p>
            ))}
          </li>
        );
      })}
    </ul>
  );
};
