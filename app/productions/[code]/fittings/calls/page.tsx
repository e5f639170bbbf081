import type { Metadata } from "next";
import { showDay } from "#lib/calendar/showDay";
import { PrintThis } from "../../../../_components/PrintThis";
import { ProductionFrame } from "../../../../_components/ProductionFrame";
import { productionHref } from "../../../../_data/address";
import { plural } from "../../../../_data/plural";
import { requireProduction } from "../../../../_data/requireProduction";
import { daysOf, loadSaid, seenFittings, weekAsked } from "../fittingsView";
import { CallSheet } from "./CallSheet";
import styles from "./Calls.module.css";

type Props = {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("read", (await params).code);
  return { title: `Fitting calls, ${view.prepared.staging.production.title}` };
};

const Calls = async ({ params, searchParams }: Props) => {
  const { member, view } = await requireProduction("read", (await params).code);
  const { staging } = view.prepared;
  const { code } = staging.production;
  const seen = view.plan ? seenFittings(view, view.plan, await loadSaid(member.company, code)) : { visits: [], unplaced: [] };
  const week = weekAsked((await searchParams).week, seen.visits, view.today);
  const days = daysOf(seen.visits, week);
  return (
    <ProductionFrame member={member} view={view} room="/fittings">
      <div className="top no-print">
        <h1>Fitting calls</h1>
        <p className="say">
          The week of {showDay(week)}: {plural(days.length, "day")}, a sheet each, for the company board, stage management and the workroom
          door. <a href={`${productionHref(code)}/fittings?week=${week}`}>All fittings</a>
        </p>
        {days.length > 0 && (
          <div className="acts">
            <PrintThis>Print them</PrintThis>
          </div>
        )}
      </div>
      {days.length === 0 && <p className="board">Nobody is fitted in that week.</p>}
      <div className={styles.papers}>
        {days.map((day) => (
          <CallSheet key={day.date} date={day.date} visits={day.visits} unplaced={seen.unplaced} staging={staging} today={view.today} />
        ))}
      </div>
    </ProductionFrame>
  );
};

export default Calls;
