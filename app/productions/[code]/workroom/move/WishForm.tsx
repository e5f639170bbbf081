import Link from "next/link";
import type { PlannedFitting, PlannedTask, StagingPlan } from "#lib/planning/stagingPlan";
import { productionHref } from "../../../../_data/address";

/** Who shall do it, on which day, from when. Asking changes nothing: it shows what follows. */
export const WishForm = ({
  plan,
  work,
  workKey,
  now,
}: {
  readonly plan: StagingPlan;
  readonly work: PlannedTask | PlannedFitting;
  readonly workKey: string;
  readonly now: { readonly maker: string; readonly date: string; readonly at: string };
}) => {
  const skill = "skill" in work ? work.skill : "fit";
  const able = plan.staging.makers.filter((maker) => (maker.skills[skill] ?? 0) > 0);
  const room = `${productionHref(plan.staging.production.code)}/workroom`;
  return (
    <form action={`${room}/move`} className="lines">
      <input type="hidden" name="key" value={workKey} />
      <div className="acts">
        <label className="field">
          Who
          <select name="maker" defaultValue={now.maker} required>
            {able.map(({ code, name, trade }) => (
              <option key={code} value={code}>
                {name}, {trade}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          Day
          <input type="date" name="date" defaultValue={now.date} required />
        </label>
        <label className="field">
          From
          <input type="time" name="at" defaultValue={now.at.padStart(5, "0")} step={"skill" in work ? 300 : 900} required />
        </label>
        <button type="submit" className="press second">
          See what follows
        </button>
        <Link href={room} className="plain">
          Leave it where it is
        </Link>
      </div>
    </form>
  );
};
