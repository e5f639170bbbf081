import type { Metadata } from "next";
import Link from "next/link";
import { listMarks } from "#prisma/work/marks";
import { KeptNote } from "../../../../_components/KeptNote";
import { ProductionFrame } from "../../../../_components/ProductionFrame";
import { productionHref } from "../../../../_data/address";
import { plural } from "../../../../_data/plural";
import { requireProduction } from "../../../../_data/requireProduction";
import { may } from "../../../../_gate/may";
import { PeopleNav } from "../PeopleNav";
import { MakerTable } from "./MakerTable";
import { makerRows } from "./makerRows";
import { StuckTasks } from "./StuckTasks";

type Props = {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<{ readonly kept?: string | string[] }>;
};

export const generateMetadata = async ({ params }: Pick<Props, "params">): Promise<Metadata> => {
  const { view } = await requireProduction("read", (await params).code);
  return { title: `Makers, ${view.prepared.staging.production.title}` };
};

const Makers = async ({ params, searchParams }: Props) => {
  const { member, view } = await requireProduction("read", (await params).code);
  const { production, makers } = view.prepared.staging;
  const rows = makerRows(view);
  const over = rows.filter(({ load }) => load?.over).length;
  const base = `${productionHref(production.code)}/people/makers`;
  return (
    <ProductionFrame member={member} view={view} room="/people">
      <PeopleNav production={production.code} page="/makers" />
      <KeptNote member={member} production={production.code} kept={(await searchParams).kept} />
      <div className="top">
        <h1>Makers</h1>
        <p className="say">
          <b>{plural(makers.length, "maker")}</b> in {production.workroom}
          {over > 0 ? (
            <>
              , <b className="bad">{over} with more planned than they have free</b> in the next four weeks.
            </>
          ) : (
            ", nobody with more planned than they have free in the next four weeks."
          )}
        </p>
        {may(member.role, "workroom") && (
          <div className="acts">
            <Link className="press" href={`${base}/new`}>
              Add somebody
            </Link>
            <Link className="press second" href={`${base}/sheet`}>
              Type into a sheet
            </Link>
          </div>
        )}
      </div>
      {view.plan && <StuckTasks plan={view.plan} marks={await listMarks(member.company, production.code)} />}
      <MakerTable rows={rows} production={production.code} />
    </ProductionFrame>
  );
};

export default Makers;
