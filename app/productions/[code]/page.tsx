import type { Metadata } from "next";
import { NotLevelled } from "../../_components/NotLevelled";
import { ProductionFrame } from "../../_components/ProductionFrame";
import { requireProduction } from "../../_data/requireProduction";
import { may } from "../../_gate/may";
import { Countdown } from "./Countdown";
import { HowFar } from "./HowFar";
import { LateList } from "./LateList";
import { LoadPicture } from "./LoadPicture";
import { NextDays } from "./NextDays";
import { OverviewSentence } from "./OverviewSentence";
import { Waits } from "./Waits";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("read", (await params).code);
  return { title: `Overview, ${view.prepared.staging.production.title}` };
};

const Overview = async ({ params }: Props) => {
  const { member, view } = await requireProduction("read", (await params).code);
  const { plan } = view;
  return (
    <ProductionFrame member={member} view={view} room="">
      <div className="top">
        <Countdown staging={view.prepared.staging} today={view.today} />
        <OverviewSentence view={view} />
      </div>
      {plan ? (
        <>
          <LoadPicture plan={plan} />
          <HowFar plan={plan} today={view.today} />
          <div className="cols part">
            <section aria-labelledby="late">
              <h2 id="late">Late, and why</h2>
              <LateList plan={plan} />
            </section>
            <section aria-labelledby="waits">
              <h2 id="waits">Waits on</h2>
              <Waits plan={plan} />
            </section>
            <section aria-labelledby="next">
              <h2 id="next">The next seven days</h2>
              <NextDays plan={plan} today={view.today} />
            </section>
          </div>
        </>
      ) : (
        <NotLevelled code={view.prepared.staging.production.code} canLevel={may(member.role, "level")} />
      )}
    </ProductionFrame>
  );
};

export default Overview;
