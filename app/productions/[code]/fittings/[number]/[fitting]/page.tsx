import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { showWall } from "#lib/calendar/showDay";
import { COME_WITH, MOVEMENTS } from "#lib/fittings/comeWith";
import { listMarks } from "#prisma/fittings/marks";
import { KeptNote } from "../../../../../_components/KeptNote";
import { ProductionFrame } from "../../../../../_components/ProductionFrame";
import { Woven } from "../../../../../_components/Woven";
import { garmentHref, isSlugOf, productionHref } from "../../../../../_data/address";
import { nameOfMaker, nameOfPerformer } from "../../../../../_data/names";
import { requireProduction } from "../../../../../_data/requireProduction";
import { may } from "../../../../../_gate/may";
import { FittingState } from "../../FittingState";
import { loadSaid, seenFittings } from "../../fittingsView";
import { MinorsCaution } from "../../MinorsCaution";
import { missingWords } from "../../missingWords";
import { Answers } from "./Answers";
import styles from "./Fitting.module.css";
import { Marks } from "./Marks";

interface Part {
  readonly code: string;
  readonly number: string;
  readonly fitting: string;
}
type Props = { readonly params: Promise<Part>; readonly searchParams: Promise<Record<string, string | string[] | undefined>> };

/** What an address stands for: once a request, for the title and for the page. */
const find = cache(async (code: string, number: string, fitting: string) => {
  const { member, view } = await requireProduction("read", code);
  if (!view.plan) notFound();
  const said = await loadSaid(member.company, view.prepared.staging.production.code);
  const { visits, unplaced } = seenFittings(view, view.plan, said);
  const all = [...visits.flatMap((visit) => visit.fittings), ...unplaced];
  const found = all.find((one) => isSlugOf(number, one.garment) && isSlugOf(fitting, one.part));
  if (!found) notFound();
  return { member, view, found, visit: visits.find((visit) => visit.visit === found.visit) ?? null, answers: said.answers };
});

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const part = await params;
  const { found } = await find(part.code, part.number, part.fitting);
  return { title: `${found.name}, ${found.garment}` };
};

const Fitting = async ({ params, searchParams }: Props) => {
  const part = await params;
  const { member, view, found, visit, answers } = await find(part.code, part.number, part.fitting);
  const { staging, garments } = view.prepared;
  const { code } = staging.production;
  const garment = garments.find(({ number }) => number === found.garment);
  const at = { garment: found.garment, fitting: found.fitting, performer: found.performer };
  const marks = (await listMarks(member.company, code, [found.garment])).filter(({ performer }) => performer === found.performer);
  const others = visit?.fittings.filter(({ node }) => node !== found.node) ?? [];
  const missing = missingWords(found.missing);
  const canAnswer = may(member.role, "work");
  return (
    <ProductionFrame member={member} view={view} room="/fittings">
      <div className={styles.fitting}>
        <p className={styles.back}>
          <Link href={`${productionHref(code)}/fittings${visit ? `?week=${visit.date}` : ""}`} prefetch={false}>
            Back to the calls
          </Link>
          <FittingState fitting={found} />
        </p>
        <p>
          <Woven number={found.garment} href={garmentHref(code, found.garment)} />
        </p>
        <h1>{nameOfPerformer(staging, found.performer)}</h1>
        <p className="q">
          {found.name}, {garment?.name}. {found.start === null ? "No time yet" : showWall(found.start)}, {found.minutes} min
          {found.fitter && `, with ${nameOfMaker(staging, found.fitter)}`}. Come with: {COME_WITH[found.kind]}.
        </p>
        <KeptNote member={member} production={code} kept={(await searchParams).kept} />
        <MinorsCaution performers={[found.performer]} staging={staging} />
        {missing.length > 0 && (
          <section className="part" aria-labelledby="missing">
            <h2 id="missing">Still missing</h2>
            <ul className="lines">
              {missing.map((words) => (
                <li key={words}>{words}</li>
              ))}
            </ul>
          </section>
        )}
        {others.length > 0 && (
          <p className="part">
            In the same visit:{" "}
            {others.map((one, i) => (
              <span key={one.node}>
                {i > 0 && ", "}
                <Link className={styles.tap} href={one.href} prefetch={false}>
                  {one.garment}, {one.name.toLowerCase()}
                </Link>
              </span>
            ))}
          </p>
        )}
        <p className="part q small">
          Try: {MOVEMENTS.join(", ")}. Ask before touching; pins and needles counted in and out; steam and irons off when left.
        </p>
        <Marks at={at} marks={marks} staging={staging} canAnswer={canAnswer} part={found.part} />
        <Answers
          at={at}
          answers={answers.filter((one) => one.garment === at.garment && one.fitting === at.fitting && one.performer === at.performer)}
          production={code}
          today={view.today}
          canAnswer={canAnswer}
        />
      </div>
    </ProductionFrame>
  );
};

export default Fitting;
