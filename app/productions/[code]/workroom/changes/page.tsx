import type { Metadata } from "next";
import Link from "next/link";
import { showHours } from "#lib/units/hours";
import { type PlanMoves, planMoves } from "#lib/whatif/planMoves";
import type { ListedPlan } from "#prisma/plans/list";
import { ActionForm } from "../../../../_components/ActionForm";
import { MovedLines } from "../../../../_components/MovedLines";
import { ProductionFrame } from "../../../../_components/ProductionFrame";
import { productionHref } from "../../../../_data/address";
import { plural } from "../../../../_data/plural";
import { requireProduction } from "../../../../_data/requireProduction";
import { showInstant } from "../../../../_data/showDates";
import { may } from "../../../../_gate/may";
import { workByPlan } from "./actions";
import { ShiftTable } from "./ShiftTable";
import { twoPlans } from "./twoPlans";

type Props = {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<{ readonly with?: string | string[] }>;
};

export const metadata: Metadata = { title: "Before and after" };

/** More lines than that nobody reads; the timeline shows them all. */
const MOST_MOVES = 60;

/** Moved, later, sooner, across their dates, hours over. */
const summary = ({ moved, stayed, sooner, later, overtimeBefore, overtimeAfter }: PlanMoves): string => {
  const shifts = [...sooner, ...later];
  const spoiled = shifts.filter(({ minutesLateBefore, minutesLateAfter }) => minutesLateBefore === 0 && minutesLateAfter > 0).length;
  const mended = shifts.filter(({ minutesLateBefore, minutesLateAfter }) => minutesLateBefore > 0 && minutesLateAfter === 0).length;
  return [
    `${plural(moved.length, "piece")} of work moved, ${stayed} stayed.`,
    `${plural(later.length, "garment")} done later, ${sooner.length} sooner;`,
    `${spoiled === 0 ? "none" : spoiled} late now that ${spoiled === 1 ? "was" : "were"} in time, ${mended === 0 ? "none" : mended} in time now that ${mended === 1 ? "was" : "were"} late.`,
    overtimeBefore === overtimeAfter
      ? `Overtime as before: ${overtimeAfter === 0 ? "none" : showHours(overtimeAfter)}.`
      : `Overtime: ${showHours(overtimeBefore)} before, ${showHours(overtimeAfter)} after.`,
  ].join(" ");
};

const Changes = async ({ params, searchParams }: Props) => {
  const { member, view } = await requireProduction("read", (await params).code);
  const { plan } = view;
  const { production } = view.prepared.staging;
  const here = `${productionHref(production.code)}/workroom/changes`;
  const asked = [(await searchParams).with].flat()[0];
  const { now, others, chosen, before } = await twoPlans(member.company, view, asked);
  const moves = plan && before && planMoves(before, plan);
  const named = ({ name, createdAt }: ListedPlan) => `${name}, ${showInstant(createdAt, production.zone)}`;
  return (
    <ProductionFrame member={member} view={view} room="/workroom">
      <div className="top">
        <h1>Before and after</h1>
        <p className="say">
          {now ? (
            <>
              The production works by <b>{named(now)}</b>.{" "}
            </>
          ) : (
            "No plan is worked by yet. "
          )}
          {chosen ? `Beside it: ${named(chosen)}, read with the list of today.` : "There is no other plan to lay beside it."}
        </p>
        {chosen && may(member.role, "level") && (
          <div className="acts">
            <ActionForm action={workByPlan} press="Put the other back" busy="Putting back" look="press">
              <input type="hidden" name="production" value={production.code} />
              <input type="hidden" name="plan" value={chosen.planId} />
            </ActionForm>
            <Link className="press second" href={`${productionHref(production.code)}/workroom`}>
              Keep this one
            </Link>
          </div>
        )}
      </div>
      {moves && plan && (
        <>
          <p role="status">{summary(moves)}</p>
          {(["later", "sooner"] as const).map(
            (way) =>
              moves[way].length > 0 && (
                <section key={way} className="part" aria-labelledby={way}>
                  <header>
                    <h2 id={way}>
                      Garments done {way} ({moves[way].length})
                    </h2>
                  </header>
                  <ShiftTable shifts={moves[way]} staging={plan.staging} label={`Garments done ${way}`} />
                </section>
              ),
          )}
          {moves.moved.length > 0 && (
            <section className="part" aria-labelledby="moved">
              <header>
                <h2 id="moved">Work that moved ({moves.moved.length})</h2>
              </header>
              <MovedLines moves={moves.moved.slice(0, MOST_MOVES)} staging={plan.staging} />
              {moves.moved.length > MOST_MOVES && <p className="q">and {moves.moved.length - MOST_MOVES} more</p>}
            </section>
          )}
        </>
      )}
      {others.length > 1 && (
        <section className="part no-print" aria-labelledby="plans">
          <header>
            <h2 id="plans">Lay another beside it</h2>
          </header>
          <ul className="lines">
            {others.map((one) => (
              <li key={one.planId}>
                {one.planId === chosen?.planId ? (
                  <b>{named(one)}</b>
                ) : (
                  <Link href={`${here}?with=${one.planId}`} prefetch={false}>
                    {named(one)}
                  </Link>
                )}
                {one.publishedAt === null && <span className="q"> never worked by</span>}
              </li>
            ))}
          </ul>
        </section>
      )}
    </ProductionFrame>
  );
};

export default Changes;
