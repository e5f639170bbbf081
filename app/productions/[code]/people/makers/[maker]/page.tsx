import type { Metadata } from "next";
import Link from "next/link";
import { addDays } from "#lib/calendar/days";
import { readDate } from "#lib/calendar/readDate";
import { showDay } from "#lib/calendar/showDay";
import { listMarks } from "#prisma/work/marks";
import { KeptNote } from "../../../../../_components/KeptNote";
import { ProductionFrame } from "../../../../../_components/ProductionFrame";
import { makerHref } from "../../../../../_data/address";
import { requireProduction } from "../../../../../_data/requireProduction";
import { showLongDay } from "../../../../../_data/showDates";
import { may } from "../../../../../_gate/may";
import { PeopleNav } from "../../PeopleNav";
import { DayList } from "./DayList";
import { findMaker } from "./findMaker";
import { MakerFacts } from "./MakerFacts";
import { makerDay, weekOf } from "./makerDay";
import { WeekList } from "./WeekList";
import { WeekStrip } from "./WeekStrip";

type Props = {
  readonly params: Promise<{ readonly code: string; readonly maker: string }>;
  readonly searchParams: Promise<{ readonly day?: string | string[]; readonly kept?: string | string[] }>;
};

export const generateMetadata = async ({ params }: Pick<Props, "params">): Promise<Metadata> => {
  const { code, maker } = await params;
  const { view } = await requireProduction("read", code);
  return { title: findMaker(view, maker).name };
};

const MakerPage = async ({ params, searchParams }: Props) => {
  const { code, maker: part } = await params;
  const { member, view } = await requireProduction("read", code);
  const { day: asked, kept } = await searchParams;
  const maker = findMaker(view, part);
  const { staging } = view.prepared;
  const { production } = staging;
  const read = readDate([asked].flat()[0] ?? "");
  const day = read.ok ? read.value : view.today;
  const href = makerHref(production.code, maker.code);
  const marks = await listMarks(member.company, production.code);
  const { plan } = view;
  const week = weekOf(day).map((date) => ({ date, parts: plan ? makerDay(plan, maker.code, date) : [] }));
  const parts = week.find(({ date }) => date === day)?.parts ?? [];
  return (
    <ProductionFrame member={member} view={view} room="/people">
      <PeopleNav production={production.code} page="/makers" />
      <KeptNote member={member} production={production.code} kept={kept} />
      <div className="top">
        <h1>{maker.name}</h1>
        <MakerFacts maker={maker} staging={staging} money={may(member.role, "money")} />
        {may(member.role, "workroom") && (
          <div className="acts">
            <Link className="press second" href={`${href}/change`}>
              Change
            </Link>
          </div>
        )}
      </div>
      {plan ? (
        <>
          <WeekStrip
            href={href}
            day={day}
            today={view.today}
            days={week.map(({ date, parts: some }) => ({ date, minutes: some.reduce((sum, { minutes }) => sum + minutes, 0) }))}
          />
          <section className="part" aria-labelledby="day">
            <header>
              <h2 id="day">{showLongDay(day)}</h2>
              {day === view.today ? <span className="q">today</span> : <Link href={href}>Today</Link>}
              <Link href={`${href}?day=${addDays(day, 1)}`} prefetch={false}>
                {showDay(addDays(day, 1))}
              </Link>
            </header>
            <DayList parts={parts} staging={staging} maker={maker.code} marks={marks} canMark={may(member.role, "work")} />
          </section>
          {week.some(({ parts: some }) => some.length > 0) && <WeekList days={week} />}
        </>
      ) : (
        <p className="board">The workroom has not been levelled yet: nothing has a day.</p>
      )}
    </ProductionFrame>
  );
};

export default MakerPage;
