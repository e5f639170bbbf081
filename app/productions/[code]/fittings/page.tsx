import type { Metadata } from "next";
import { dayNumber, mondayOf, plainDate } from "#lib/calendar/days";
import { NotLevelled } from "../../../_components/NotLevelled";
import { ProductionFrame } from "../../../_components/ProductionFrame";
import { productionHref } from "../../../_data/address";
import { plural } from "../../../_data/plural";
import { requireProduction } from "../../../_data/requireProduction";
import { may } from "../../../_gate/may";
import { DayTable } from "./DayTable";
import { daysOf, loadSaid, seenFittings, weekAsked } from "./fittingsView";
import { MinorsCaution } from "./MinorsCaution";
import { Unplaced } from "./Unplaced";
import { WeekNav } from "./WeekNav";

type Props = {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("read", (await params).code);
  return { title: `Fittings, ${view.prepared.staging.production.title}` };
};

const Fittings = async ({ params, searchParams }: Props) => {
  const { member, view } = await requireProduction("read", (await params).code);
  const { staging } = view.prepared;
  const { code } = staging.production;
  if (!view.plan)
    return (
      <ProductionFrame member={member} view={view} room="/fittings">
        <div className="top">
          <h1>Fittings</h1>
        </div>
        <NotLevelled code={code} canLevel={may(member.role, "level")} />
      </ProductionFrame>
    );
  const { visits, unplaced } = seenFittings(view, view.plan, await loadSaid(member.company, code));
  const week = weekAsked((await searchParams).week, visits, view.today);
  const days = daysOf(visits, week);
  const base = productionHref(code);
  const all = visits.flatMap(({ fittings }) => fittings);
  const clashes = all.filter((fitting) => fitting.answer === null && fitting.clashes.length > 0).length;
  const again = all.filter(({ answer }) => answer !== null && answer.answer !== "done");
  return (
    <ProductionFrame member={member} view={view} room="/fittings">
      <div className="top">
        <h1>Fittings</h1>
        <p className="say">
          <b>{plural(all.length, "fitting")}</b> in {plural(visits.length, "visit")},{" "}
          {plural(all.filter(({ answer }) => answer?.answer === "done").length, "done", "done")}.{" "}
          {unplaced.length > 0 && <b className="bad">{unplaced.length === 1 ? "One has no time." : `${unplaced.length} have no time.`} </b>}
          {clashes > 0 ? <b className="bad">{plural(clashes, "clash", "clashes")}.</b> : "No clash."}
          {view.stale && " The data have changed since the plan was levelled."}
        </p>
        <div className="acts">
          <a className="press second" href={`${base}/fittings/calls?week=${week}`}>
            Call sheets
          </a>
          <a className="press second" href={`${base}/fittings.ics`} download>
            For a calendar
          </a>
        </div>
      </div>
      <WeekNav
        href={`${base}/fittings`}
        week={week}
        weeks={[...new Set(visits.map(({ date }) => plainDate(mondayOf(dayNumber(date)))))].sort()}
      />
      <MinorsCaution performers={days.flatMap((day) => day.visits.map(({ performer }) => performer))} staging={staging} />
      {days.length === 0 && <p className="part q">Nobody is fitted in that week.</p>}
      {days.map((day) => (
        <DayTable key={day.date} date={day.date} visits={day.visits} staging={staging} />
      ))}
      <Unplaced fittings={[...unplaced, ...again]} staging={staging} />
    </ProductionFrame>
  );
};

export default Fittings;
