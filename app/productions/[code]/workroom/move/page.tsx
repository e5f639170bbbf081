import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { readClock, showClock, splitWall } from "#lib/calendar/clock";
import { isoDate } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { showWall } from "#lib/calendar/showDay";
import { showHours } from "#lib/units/hours";
import { loadHandPins } from "#prisma/plans/handPins";
import { ActionForm } from "../../../../_components/ActionForm";
import { ProductionFrame } from "../../../../_components/ProductionFrame";
import { nameOfMaker } from "../../../../_data/names";
import { requireProduction } from "../../../../_data/requireProduction";
import { freeWork, keepWork } from "./actions";
import { followed, type Wish, workOf } from "./followed";
import { WhatFollows } from "./WhatFollows";
import { WishForm } from "./WishForm";

type Asked = Readonly<Record<string, string | string[] | undefined>>;
type Props = { readonly params: Promise<{ readonly code: string }>; readonly searchParams: Promise<Asked> };

export const metadata: Metadata = { title: "Move work" };

/** What the address asks for; null until it says who, which day and when. */
const wishOf = (asked: Asked, key: string): Wish | null => {
  const one = (name: string) => [asked[name]].flat()[0] ?? "";
  const date = isoDate(one("date"));
  const at = readClock(one("at"));
  return date && at.ok && one("maker") !== "" ? { key, maker: one("maker"), date: date as PlainDate, at: at.value } : null;
};

const Move = async ({ params, searchParams }: Props) => {
  const { member, view } = await requireProduction("workroom", (await params).code);
  const asked = await searchParams;
  const key = [asked.key].flat()[0] ?? "";
  const { plan } = view;
  const work = plan && workOf(plan, key);
  if (!plan || !work) notFound();
  const pins = await loadHandPins(member.company, view.productionId);
  const fixed = pins.some((pin) => pin.key === key);
  const who = "maker" in work ? work.maker : work.fitter;
  const wish = wishOf(asked, key);
  const result = wish && (await followed(view, pins, wish));
  const { production } = plan.staging;
  const hidden = { production: production.code, key, seen: String(view.levelledAt?.getTime() ?? "") };
  const stands = work.start === null ? null : splitWall(work.start);
  return (
    <ProductionFrame member={member} view={view} room="/workroom">
      <div className="top">
        <h1>Move work</h1>
        <p className="say">
          <b>{work.name}</b> of {"garments" in work ? work.garments.join(", ") : work.garment}, {showHours(work.minutes)},{" "}
          {work.start === null ? "has no place yet." : `stands with ${nameOfMaker(plan.staging, who)} on ${showWall(work.start)}.`}
          {fixed && " It is fixed by hand."}
        </p>
        {fixed && (
          <div className="acts">
            <ActionForm action={freeWork} press="Let it go" busy="Letting go">
              <input type="hidden" name="production" value={production.code} />
              <input type="hidden" name="key" value={key} />
            </ActionForm>
          </div>
        )}
      </div>
      <WishForm
        plan={plan}
        work={work}
        workKey={key}
        now={{
          maker: wish?.maker ?? who ?? "",
          date: wish?.date ?? stands?.date ?? view.today,
          at: showClock(wish?.at ?? stands?.minute ?? 540),
        }}
      />
      {result && !result.ok && (
        <p role="alert" className="slip wrong">
          {result.error}
        </p>
      )}
      {wish && result?.ok && (
        <WhatFollows moves={result.value.moves} after={result.value.after} movedKey={key}>
          <ActionForm action={keepWork} press="Keep it there" busy="Keeping" look="press">
            {Object.entries({ ...hidden, maker: wish.maker, date: wish.date, at: showClock(wish.at) }).map(([name, value]) => (
              <input key={name} type="hidden" name={name} value={value} />
            ))}
          </ActionForm>
        </WhatFollows>
      )}
    </ProductionFrame>
  );
};

export default Move;
