import type { Skill } from "#lib/labour/skills";
import { words as wordsOf } from "#lib/words/words";
import { wholeHours } from "../../_data/hours";
import { plural } from "../../_data/plural";
import type { ProductionView } from "../../_data/stagingPlan";
import { loadRows } from "./loadRows";

/** The one sentence at the top: hours needed and free, what hangs lowest below the hem, how many garments are late. */
export const OverviewSentence = ({ view }: { readonly view: ProductionView }) => {
  const { plan, prepared } = view;
  if (!plan)
    return (
      <p className="say">
        <b>{plural(prepared.garments.length, "garment")}</b> to make ready. The workroom has not been levelled yet, so nothing has a day.
      </p>
    );
  const load = loadRows(plan);
  const lowest = load.rows.toSorted((a, b) => b.over - a.over)[0];
  const late = plan.summary.lateGarments;
  return (
    <p className="say">
      {plural(plan.summary.garments, "garment")} and their fittings take <b>{wholeHours(load.planned)} h</b> of the workroom, which has{" "}
      <b>{wholeHours(load.free)} h</b> free
      {lowest && lowest.over > 0 && (
        <>
          , but {wordsOf(plan.staging.production.words).skills[lowest.code as Skill].toLowerCase()} hangs{" "}
          <b className="bad">
            {wholeHours(lowest.over)} h below the hem in {plural(lowest.weeksOver, "week")}
          </b>
        </>
      )}
      .{" "}
      {late === 0 ? (
        <>No garment comes late.</>
      ) : (
        <b className="bad">{late === 1 ? "One garment comes late." : `${late} garments come late.`}</b>
      )}
      {view.stale && " The list has changed since it was levelled: level again."}
    </p>
  );
};
