import { showHours } from "#lib/units/hours";
import { listed, plural } from "../../../_data/plural";
import { showInstant } from "../../../_data/showDates";
import type { ProductionView } from "../../../_data/stagingPlan";

/** When it was levelled, what is late, how much overtime, what no plan can better, and with whom the makers are shared. */
export const WorkroomSentence = ({ view }: { readonly view: ProductionView }) => {
  const { plan, levelledAt, stale, prepared, sharedWith } = view;
  if (!plan || !levelledAt) return <p className="say">{plural(prepared.staging.makers.length, "maker")}; not levelled yet.</p>;
  const { summary } = plan;
  const proved = summary.lateGarments > 0 && summary.latenessBound >= summary.weightedLateness;
  return (
    <p className="say">
      Levelled {showInstant(levelledAt, prepared.staging.production.zone)}, {plural(summary.rounds, "round")}.{" "}
      {summary.lateGarments > 0 ? <b className="bad">{plural(summary.lateGarments, "garment")} late</b> : <b>Nothing late</b>},{" "}
      {summary.overtimeMinutes > 0 ? `${showHours(summary.overtimeMinutes)} of overtime` : "no overtime"}.
      {proved && " No plan with these people and days is less late."}
      {stale && <b> The list has changed since: level again.</b>}
      {sharedWith.length > 0 && ` The workroom is shared with ${listed(sharedWith)}: what their plans have taken is nobody's here.`}
    </p>
  );
};
