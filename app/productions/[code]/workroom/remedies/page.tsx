import type { Metadata } from "next";
import Link from "next/link";
import { latestRemedyRun } from "#prisma/plans/remedyRuns";
import { ActionForm } from "../../../../_components/ActionForm";
import { ProductionFrame } from "../../../../_components/ProductionFrame";
import { Woven } from "../../../../_components/Woven";
import { garmentHref, productionHref } from "../../../../_data/address";
import { plural } from "../../../../_data/plural";
import { requireProduction } from "../../../../_data/requireProduction";
import { may } from "../../../../_gate/may";
import { Answers } from "./Answers";
import { askWhatHelps } from "./actions";
import { OwnRemedies } from "./OwnRemedies";
import { RemedyProgress } from "./RemedyProgress";
import { remedyWords } from "./remedyWords";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const metadata: Metadata = { title: "What would help" };

const MOST_NAMED = 5;

const Remedies = async ({ params }: Props) => {
  const { member, view } = await requireProduction("read", (await params).code);
  const { plan } = view;
  const { production } = view.prepared.staging;
  const workroom = `${productionHref(production.code)}/workroom`;
  const run = await latestRemedyRun(member.company, view.productionId);
  const words = run && remedyWords(run);
  const late = plan?.garmentStates.filter(({ minutesLate }) => minutesLate > 0) ?? [];
  const mayAsk = may(member.role, "level") && plan !== null;
  const old = run !== null && run.planId !== view.planId;
  return (
    <ProductionFrame member={member} view={view} room="/workroom">
      <div className="top">
        <h1>What would help</h1>
        <p className="say">
          {plan === null ? (
            "There is no plan yet: "
          ) : late.length > 0 ? (
            <b className="bad">{plural(late.length, "garment")} late. </b>
          ) : (
            <b>Nothing is late. </b>
          )}
          {plan === null ? (
            <Link href={workroom}>level first</Link>
          ) : (
            "Each remedy is planned from the plan as it stands, and laid beside it."
          )}
        </p>
        {mayAsk && late.length > 0 && !words?.active && (
          <div className="acts">
            <ActionForm action={askWhatHelps} press="Try what the causes suggest" busy="Asking" look="press">
              <input type="hidden" name="production" value={production.code} />
            </ActionForm>
          </div>
        )}
      </div>
      {late.length > 0 && (
        <section className="part" aria-labelledby="why">
          <header>
            <h2 id="why">Why they are late</h2>
          </header>
          <ul className="lines">
            {late.slice(0, MOST_NAMED).map(({ garment, why }) => (
              <li key={garment}>
                <Woven number={garment} href={garmentHref(production.code, garment)} /> {why[0]}
              </li>
            ))}
            {late.length > MOST_NAMED && <li className="q">and {late.length - MOST_NAMED} more</li>}
          </ul>
        </section>
      )}
      {words && (
        <section className="part" aria-labelledby="answers">
          <header>
            <h2 id="answers">Answers</h2>
          </header>
          <RemedyProgress key={`${run?.id} ${words.active}`} href={`${workroom}/remedies`} first={words} />
          {old && <p className="q">These answers are of an earlier plan.</p>}
          {run?.found && <Answers found={run.found} production={production} money={may(member.role, "money")} />}
        </section>
      )}
      {mayAsk && (
        <section className="part no-print" aria-labelledby="own">
          <header>
            <h2 id="own">Ask about something of your own</h2>
          </header>
          <OwnRemedies staging={view.prepared.staging} />
          <p className="small q">
            More hands are paid for all their hours; whoever works out of the house does all but patterns and fittings. What a quicker
            delivery or another machine costs is not known here. Long hours tire and hurt: your own agreement and the law come first.
          </p>
        </section>
      )}
    </ProductionFrame>
  );
};

export default Remedies;
