import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { garmentCost, workedSoFar } from "#lib/sheets/garmentCost";
import { words as wordsOf } from "#lib/words/words";
import { listEdits } from "#prisma/editing/listEdits";
import { listAnswers } from "#prisma/fittings/answers";
import { listNotes } from "#prisma/notes/notes";
import { listPhotos } from "#prisma/photos/photos";
import { listMarks, markedAs } from "#prisma/work/marks";
import { KeptNote } from "../../../../_components/KeptNote";
import { ProductionFrame } from "../../../../_components/ProductionFrame";
import { SectionDrawing } from "../../../../_components/SectionDrawing";
import { TaskGraph } from "../../../../_components/TaskGraph";
import { Wide } from "../../../../_components/Wide";
import { garmentHref, isSlugOf, productionHref } from "../../../../_data/address";
import { requireProduction } from "../../../../_data/requireProduction";
import type { ProductionView } from "../../../../_data/stagingPlan";
import { may } from "../../../../_gate/may";
import { Cost } from "./Cost";
import { Drivers } from "./Drivers";
import { Fittings } from "./Fittings";
import { GarmentHead } from "./GarmentHead";
import { GarmentHistory } from "./GarmentHistory";
import { KeptNotes } from "./KeptNotes";
import { Needs } from "./Needs";
import { Photographs } from "./Photographs";
import { Tasks } from "./Tasks";
import { Wearers } from "./Wearers";

type Props = {
  readonly params: Promise<{ readonly code: string; readonly number: string }>;
  readonly searchParams: Promise<Record<string, string | string[] | undefined>>;
};

/** How far back a garment's history is looked for. */
const EDITS_LOOKED_AT = 300;

const find = (view: ProductionView, number: string) => {
  const garment = view.prepared.garments.find((each) => isSlugOf(number, each.number));
  if (!garment) notFound();
  return { garment, work: view.prepared.works.find((each) => each.garment === garment.number) ?? null };
};

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { code, number } = await params;
  const { view } = await requireProduction("read", code);
  const { garment } = find(view, number);
  return { title: `${garment.number}, ${garment.name}` };
};

const GarmentPage = async ({ params, searchParams }: Props) => {
  const { code, number } = await params;
  const { member, view } = await requireProduction("read", code);
  const { garment, work } = find(view, number);
  const { staging } = view.prepared;
  const measurements = may(member.role, "measurements");
  const { production } = staging;
  const href = garmentHref(production.code, garment.number);
  const [notes, photos, edits, marks, answers] = await Promise.all([
    listNotes(member.company, production.code, garment.number),
    listPhotos(member.company, production.code, garment.number),
    may(member.role, "history") ? listEdits(member.company, production.code, EDITS_LOOKED_AT) : [],
    listMarks(member.company, production.code),
    listAnswers(member.company, production.code),
  ]);
  const own = view.plan?.tasks.filter(({ garments }) => garments.includes(garment.number)) ?? [];
  const worked = workedSoFar(
    own.map((task) => ({ ...task, worked: marks.get(markedAs(task))?.worked ?? 0 })),
    staging.makers,
  );
  const canNote = may(member.role, "note");
  return (
    <ProductionFrame member={member} view={view} room="/garments">
      <GarmentHead garment={garment} work={work} view={view}>
        <a className="press second" href={`${productionHref(production.code)}/tickets?number=${encodeURIComponent(garment.number)}`}>
          Print {wordsOf(production.words).trade.ticket}
        </a>
        {may(member.role, "wardrobe") && (
          <a
            className="press second"
            href={`${productionHref(production.code)}/garments/change?number=${encodeURIComponent(garment.number)}`}
          >
            Change
          </a>
        )}
      </GarmentHead>
      <KeptNote member={member} production={production.code} kept={(await searchParams).kept} />
      <div className="cols uneven">
        <div>
          {work && work.layers.length > 0 && (
            <section className="board" aria-labelledby="section">
              <h2 id="section">Section</h2>
              <Wide label="Section of the skirt">
                <SectionDrawing work={work} staging={staging} />
              </Wide>
            </section>
          )}
          <Wearers garment={garment} staging={staging} measurements={measurements} />
          {work && work.fittings.length > 0 && (
            <Fittings garment={garment} work={work} plan={view.plan} staging={staging} answers={answers} />
          )}
          <KeptNotes
            said={work?.notes ?? []}
            notes={notes}
            production={production.code}
            garment={garment.number}
            zone={production.zone}
            user={member.user.id}
            canNote={canNote}
          />
        </div>
        <div>
          {work && work.drivers.length > 0 && <Drivers work={work} production={staging.production} />}
          {may(member.role, "money") && view.plan && (
            <Cost cost={garmentCost(garment, work, staging, view.plan.purchase)} worked={worked} production={production} />
          )}
          {work && !measurements && <p className="cap">What is counted from the body is shown to those who cut, make and fit.</p>}
        </div>
      </div>
      {work && work.operations.length > 0 ? (
        <section className="part" aria-labelledby="tasks">
          <header>
            <h2 id="tasks">Tasks, and what waits for what</h2>
          </header>
          <Wide label="Tasks, and what waits for what" fit>
            <TaskGraph work={work} plan={view.plan} staging={staging} />
          </Wide>
          <Tasks work={work} plan={view.plan} staging={staging} markOf={(task) => marks.get(markedAs(task))} />
        </section>
      ) : (
        <p className="part board">Nothing has to be made: it comes as it is.</p>
      )}
      {work && work.needs.length > 0 && <Needs work={work} staging={staging} />}
      <Photographs
        photos={photos}
        href={href}
        production={production.code}
        garment={garment.number}
        zone={production.zone}
        canAdd={canNote}
        mayDrop={(photo) => canNote && (photo.user === member.user.id || may(member.role, "wardrobe"))}
      />
      {may(member.role, "history") && <GarmentHistory edits={edits} garment={garment} zone={production.zone} />}
    </ProductionFrame>
  );
};

export default GarmentPage;
