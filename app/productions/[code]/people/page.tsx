import type { Metadata } from "next";
import Link from "next/link";
import { ProductionFrame } from "../../../_components/ProductionFrame";
import { productionHref } from "../../../_data/address";
import { plural } from "../../../_data/plural";
import { requireProduction } from "../../../_data/requireProduction";
import { MakerTable } from "./makers/MakerTable";
import { makerRows } from "./makers/makerRows";
import { PeopleNav } from "./PeopleNav";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("read", (await params).code);
  return { title: `People, ${view.prepared.staging.production.title}` };
};

const People = async ({ params }: Props) => {
  const { member, view } = await requireProduction("read", (await params).code);
  const { staging } = view.prepared;
  const { production, performers, casting, makers, machines } = staging;
  const base = `${productionHref(production.code)}/people`;
  const cast = new Set(casting.flatMap(({ performer }) => performer ?? []));
  const uncast = casting.filter(({ performer, standing }) => performer === null && standing === "cast").length;
  return (
    <ProductionFrame member={member} view={view} room="/people">
      <PeopleNav production={production.code} page="" />
      <div className="top">
        <h1>People</h1>
        <p className="say">
          <b>{plural(performers.length, "performer")}</b>, {cast.size} of them in this production;{" "}
          {uncast === 0 ? "every place is cast" : plural(uncast, "place stands", "places stand")}
          {uncast > 0 && " on a size group"}. <b>{plural(makers.length, "maker")}</b> and{" "}
          {plural(
            machines.reduce((sum, { count }) => sum + count, 0),
            "machine",
          )}{" "}
          in {production.workroom}.
        </p>
      </div>
      <section className="part" aria-labelledby="makers">
        <header>
          <h2 id="makers">Makers</h2>
          <Link href={`${base}/makers`}>All about them</Link>
        </header>
        <MakerTable rows={makerRows(view)} production={production.code} />
      </section>
      <section className="part" aria-labelledby="performers">
        <header>
          <h2 id="performers">Performers</h2>
        </header>
        <p>
          <Link href={`${base}/performers`}>{plural(performers.length, "performer")}, with what they wear and when they were measured</Link>
        </p>
      </section>
    </ProductionFrame>
  );
};

export default People;
