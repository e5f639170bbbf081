import type { Metadata } from "next";
import { words as wordsOf } from "#lib/words/words";
import { KeptNote } from "../../../../../_components/KeptNote";
import { ProductionFrame } from "../../../../../_components/ProductionFrame";
import { productionHref } from "../../../../../_data/address";
import { plural } from "../../../../../_data/plural";
import { requireProduction } from "../../../../../_data/requireProduction";
import { may } from "../../../../../_gate/may";
import { PeopleNav } from "../../PeopleNav";
import { PerformerForm } from "../PerformerForm";
import { Figure } from "./Figure";
import { findPerformer } from "./findPerformer";
import { MissingList } from "./MissingList";
import { SheetTable } from "./SheetTable";
import { shownSheets } from "./shownSheets";
import { askedUnits, UnitLinks } from "./UnitLinks";
import { Worn } from "./Worn";

type Props = {
  readonly params: Promise<{ readonly code: string; readonly performer: string }>;
  readonly searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { code, performer } = await params;
  const { view } = await requireProduction("read", code);
  return { title: findPerformer(view, performer).name };
};

const PerformerPage = async ({ params, searchParams }: Props) => {
  const { code, performer: part } = await params;
  const { member, view } = await requireProduction("read", code);
  const performer = findPerformer(view, part);
  const { staging, garments } = view.prepared;
  const words = wordsOf(staging.production.words);
  const asked = await searchParams;
  const lengths = askedUnits(asked.units, staging.production.lengths);
  const shown = shownSheets(member.role, view, performer.code);
  const missing = shown?.wanted.filter(({ from }) => from !== "sheet") ?? [];
  const group = staging.sizeGroups.find((each) => each.code === performer.sizeGroup)?.name ?? performer.sizeGroup;
  const base = `${productionHref(staging.production.code)}/people/performers`;
  return (
    <ProductionFrame member={member} view={view} room="/people">
      <PeopleNav production={view.prepared.staging.production.code} page="/performers" />
      <div className="top">
        <h1>{performer.name}</h1>
        <p className="say">
          {group}.{" "}
          {shown &&
            (missing.length === 0 ? (
              "Nothing is missing for what is made. "
            ) : (
              <b>{plural(missing.length, "measurement")} missing for what is made. </b>
            ))}
          <a href={base}>All performers</a>
        </p>
        {may(member.role, "measure") && (
          <div className="acts">
            <a className="press" href={`${base}/${encodeURIComponent(performer.code)}/sheet`}>
              Take measurements
            </a>
          </div>
        )}
      </div>
      <KeptNote member={member} production={staging.production.code} kept={asked.kept} />
      {performer.minor && (
        <p className="slip">
          Under age: a parent's consent, a licensed chaperone, never one adult alone, and a private room. Ask before touching, and say no
          numbers aloud. Local rules come first.
        </p>
      )}
      <MissingList missing={missing} words={words} />
      {shown ? (
        <div className="part">
          <div className="cols uneven">
            <section aria-labelledby="sheets">
              <h2 id="sheets">Measurements</h2>
              <UnitLinks lengths={lengths} />
              {shown.sheets.length === 0 || shown.measurements.length === 0 ? (
                <p className="board">
                  {shown.sheets.length === 0
                    ? "Not measured yet: the size group stands in for everything."
                    : "Nothing that is made for this performer is cut by a measurement."}
                </p>
              ) : (
                <SheetTable shown={shown} words={words} lengths={lengths} />
              )}
            </section>
            {shown.measurements.length > 0 && (
              <section aria-labelledby="where">
                <h2 id="where">Where each is taken</h2>
                <Figure measurements={shown.measurements} labels={words.measurements} />
              </section>
            )}
          </div>
        </div>
      ) : (
        <p className="cap part">Measurements are shown to those who cut, make and fit.</p>
      )}
      {may(member.role, "measure") && <PerformerForm staging={staging} code={performer.code} />}
      <Worn garments={garments} staging={staging} performer={performer.code} />
    </ProductionFrame>
  );
};

export default PerformerPage;
