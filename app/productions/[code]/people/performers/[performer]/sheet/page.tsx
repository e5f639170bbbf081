import { MEASUREMENTS } from "#lib/measurements/measurement";
import { wantedOf } from "#lib/measurements/wanted";
import { words as wordsOf } from "#lib/words/words";
import { ProductionFrame } from "../../../../../../_components/ProductionFrame";
import { productionHref } from "../../../../../../_data/address";
import { requireProduction } from "../../../../../../_data/requireProduction";
import { PeopleNav } from "../../../PeopleNav";
import { Figure } from "../Figure";
import { findPerformer } from "../findPerformer";
import { PasteRow } from "./PasteRow";

type Props = { readonly params: Promise<{ readonly code: string; readonly performer: string }> };

export const metadata = { title: "Take measurements" };

const SheetPage = async ({ params }: Props) => {
  const { code, performer: part } = await params;
  const { member, view } = await requireProduction("measure", code);
  const performer = findPerformer(view, part);
  const { staging, garments } = view.prepared;
  const words = wordsOf(staging.production.words);
  const wanted = new Set(wantedOf(staging, garments, performer.code).map(({ measurement }) => measurement));
  const fields = MEASUREMENTS.map((name, at) => ({ name, number: at + 1, label: words.measurements[name], wanted: wanted.has(name) }));
  return (
    <ProductionFrame member={member} view={view} room="/people">
      <PeopleNav production={view.prepared.staging.production.code} page="/performers" />
      <div className="top">
        <h1>{performer.name}</h1>
        <p className="say">
          Measurements. Tape touching, not tight; warm if there is a choice; leotard and tights, never self-measured. An empty field was not
          taken. <a href={`${productionHref(staging.production.code)}/people/performers/${encodeURIComponent(performer.code)}`}>Back</a>
        </p>
      </div>
      {performer.minor && (
        <p className="slip">Under age: chaperone present, consent given, private room; say no numbers aloud. Local rules come first.</p>
      )}
      <div className="cols uneven">
        <div>
          <PasteRow
            production={staging.production.code}
            performer={performer.code}
            today={view.today}
            fields={fields}
            bodies={Object.entries(words.bodies)}
          />
        </div>
        <section aria-labelledby="where">
          <h2 id="where">Where each is taken</h2>
          <Figure measurements={MEASUREMENTS} labels={words.measurements} anchor="f" />
        </section>
      </div>
    </ProductionFrame>
  );
};

export default SheetPage;
