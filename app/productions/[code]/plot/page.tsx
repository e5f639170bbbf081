import type { Metadata } from "next";
import { castsOf } from "#lib/casting/castingGrid";
import { costumeChanges, isQuick } from "#lib/running/changes";
import { dressers } from "#lib/running/dressers";
import { groupedChanges } from "#lib/running/groupedChanges";
import { costumePlot } from "#lib/running/plot";
import { ProductionFrame } from "../../../_components/ProductionFrame";
import { productionHref } from "../../../_data/address";
import { plural } from "../../../_data/plural";
import { requireProduction } from "../../../_data/requireProduction";
import { may } from "../../../_gate/may";
import { ChangeTable } from "./ChangeTable";
import { CostumeList } from "./CostumeList";
import { PlotTable } from "./PlotTable";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("read", (await params).code);
  return { title: `Costume plot, ${view.prepared.staging.production.title}` };
};

const PlotPage = async ({ params }: Props) => {
  const { member, view } = await requireProduction("read", (await params).code);
  const { staging } = view.prepared;
  const plot = costumePlot(staging);
  const all = costumeChanges(staging);
  // Casts dance on different evenings: each has its own dressers.
  const evenings = castsOf(staging).map((cast) => ({
    cast,
    ...dressers(
      staging,
      all.filter((change) => change.cast === cast),
    ),
  }));
  const changes = groupedChanges(evenings.flatMap((evening) => evening.changes));
  const quick = changes.filter(isQuick).length;
  const base = `${productionHref(staging.production.code)}/plot`;
  return (
    <ProductionFrame member={member} view={view} room="/plot">
      <div className="top">
        <h1>Costume plot</h1>
        <p className="say">
          <b>{plural(staging.scenes.length, "scene")}</b>, {plot.minutes} minutes from curtain up.{" "}
          {plural(staging.costumes.length, "costume")}, {plural(changes.length, "change")}
          {quick > 0 ? (
            <>
              , <b className="bad">{quick} of them quick</b>.
            </>
          ) : (
            ", none of them quick."
          )}
        </p>
        {(may(member.role, "cast") || may(member.role, "wardrobe")) && (
          <div className="acts">
            {may(member.role, "cast") && (
              <a className="press second" href={`${base}/scenes`}>
                Scenes and roles
              </a>
            )}
            {may(member.role, "wardrobe") && (
              <>
                <a className="press second" href={`${base}/appearances`}>
                  Who appears when
                </a>
                <a className="press second" href={`${base}/costumes`}>
                  Costumes and sets
                </a>
              </>
            )}
          </div>
        )}
      </div>
      {staging.scenes.length === 0 ? (
        <p className="board">There is no scene yet. Scenes come with the files of the production, or are written down here.</p>
      ) : (
        <>
          <PlotTable plot={plot} staging={staging} base={base} />
          <ChangeTable changes={changes} evenings={evenings} staging={staging} />
        </>
      )}
      <CostumeList staging={staging} works={view.prepared.works} garments={view.prepared.garments} base={base} />
    </ProductionFrame>
  );
};

export default PlotPage;
