import type { GarmentWork } from "#lib/breakdown/work";
import { splitWall } from "#lib/calendar/clock";
import { showDay } from "#lib/calendar/showDay";
import type { Garment } from "#lib/casting/wardrobe";
import { showHours } from "#lib/units/hours";
import { State } from "../../../../_components/State";
import { Woven } from "../../../../_components/Woven";
import { lateWords } from "../../../../_data/lateWords";
import { nameOfRole } from "../../../../_data/names";
import { listed } from "../../../../_data/plural";
import { dayOfFinish } from "../../../../_data/showDates";
import type { ProductionView } from "../../../../_data/stagingPlan";
import { wearerName } from "../../../../_data/wearers";
import { madeWords } from "../garmentRows";

const ready = (garment: Garment, view: ProductionView): React.ReactNode => {
  const { staging } = view.prepared;
  const state = view.plan?.garmentStates.find((each) => each.garment === garment.number);
  if (!view.plan) return "Not levelled yet.";
  if (!state) return null;
  if (state.finish === null) return <b className="bad">It has no place in the plan.</b>;
  const finish = `Ready ${showDay(dayOfFinish(state.finish))}`;
  if (state.minutesLate === 0) return `${finish}, wanted ${showDay(splitWall(state.due).date)}.`;
  return (
    <b className="bad">
      {finish}, {lateWords(state, staging)}.
    </b>
  );
};

/** Number, name and the one sentence: what it is, who wears it, how much work, when it is ready. */
export const GarmentHead = ({
  garment,
  work,
  view,
  children,
}: {
  readonly garment: Garment;
  readonly work: GarmentWork | null;
  readonly view: ProductionView;
  /** What can be done with it. */
  readonly children: React.ReactNode;
}) => {
  const { staging } = view.prepared;
  const state = view.plan?.garmentStates.find((each) => each.garment === garment.number);
  const minutes = state?.minutes ?? work?.operations.reduce((total, operation) => total + operation.minutes[1], 0) ?? 0;
  const set = staging.sets.find((each) => each.code === garment.set);
  const made = garment.wearers.filter((wearer) => wearer.standing === "cast").map((wearer) => wearerName(wearer, staging));
  const covers = garment.wearers.filter((wearer) => wearer.standing === "cover").map((wearer) => wearerName(wearer, staging));
  return (
    <div className="top">
      <div>
        <p className="acts" style={{ margin: 0 }}>
          <Woven number={garment.number} big />
          {state && state.minutesLate > 0 && <State code="late">Late</State>}
        </p>
        <h1>{garment.name}</h1>
      </div>
      <p className="say">
        {nameOfRole(staging, garment.role)}: {madeWords(garment, staging).toLowerCase()}
        {set && (
          <>
            , {garment.ordinal} of {set.name}
            {garment.prototype && ", its prototype"}
          </>
        )}
        .{" "}
        {made.length > 0 && (
          <>
            Danced by <b>{listed(made)}</b>.{" "}
          </>
        )}
        {covers.length > 0 && (
          <>
            {listed(covers)} {covers.length === 1 ? "stands" : "stand"} by.{" "}
          </>
        )}
        {minutes > 0 && (
          <>
            <b>{showHours(minutes)}</b> of work.{" "}
          </>
        )}
        {ready(garment, view)}
      </p>
      <div className="acts">{children}</div>
    </div>
  );
};
