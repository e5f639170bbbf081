import type { Metadata } from "next";
import Link from "next/link";
import { medianWork } from "#lib/breakdown/medianWork";
import { words as wordsOf } from "#lib/words/words";
import { ProductionFrame } from "../../../../_components/ProductionFrame";
import { constructionHref } from "../../../../_data/address";
import { requireProduction } from "../../../../_data/requireProduction";
import { may } from "../../../../_gate/may";
import { Differences } from "./Differences";
import { Drivers } from "./Drivers";
import { findConstruction } from "./findConstruction";
import { NeedRules } from "./NeedRules";
import { Operations } from "./Operations";
import { Parameters } from "./Parameters";
import { UsedBy } from "./UsedBy";
import { Versions } from "./Versions";

type Props = {
  readonly params: Promise<{ readonly code: string; readonly construction: string }>;
  readonly searchParams: Promise<{ readonly version?: string | string[] }>;
};

export const generateMetadata = async ({ params }: Pick<Props, "params">): Promise<Metadata> => {
  const { code, construction } = await params;
  const { view } = await requireProduction("read", code);
  const { shown } = findConstruction(view, construction);
  return { title: shown.name[view.prepared.staging.production.words] };
};

const ConstructionPage = async ({ params, searchParams }: Props) => {
  const { code, construction } = await params;
  const { member, view } = await requireProduction("read", code);
  const { staging, garments } = view.prepared;
  const { production } = staging;
  const { shown, versions } = findConstruction(view, construction, [(await searchParams).version].flat()[0]);
  const made = garments.filter((garment) => garment.construction === shown.code);
  const work = medianWork(shown, {}, undefined, production);
  const before = versions.filter(({ version }) => version < shown.version).at(-1);
  return (
    <ProductionFrame member={member} view={view} room="/constructions">
      <div className="top">
        <h1>{shown.name[production.words]}</h1>
        <p className="say">
          Version {shown.version}. {shown.source}
        </p>
        {may(member.role, "wardrobe") && (
          <div className="acts">
            <Link className="press second" href={`${constructionHref(production.code, shown.code)}/change?version=${shown.version}`}>
              Change it, or copy it
            </Link>
          </div>
        )}
      </div>
      {shown.cautions.length > 0 && (
        <ul className="slip" aria-label="Take care">
          {shown.cautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      )}
      {versions.length > 1 && <Versions versions={versions} shown={shown} production={production} />}
      {before && <Differences before={before} after={shown} />}
      <Parameters construction={shown} words={production.words} />
      <Drivers construction={shown} work={work} production={production} />
      <Operations construction={shown} work={work} words={wordsOf(production.words)} usage={production.words} />
      <NeedRules construction={shown} work={work} staging={staging} />
      <UsedBy garments={made} staging={staging} />
    </ProductionFrame>
  );
};

export default ConstructionPage;
