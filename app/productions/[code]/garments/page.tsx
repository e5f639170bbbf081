import type { Metadata } from "next";
import { showHours } from "#lib/units/hours";
import { listViews } from "#prisma/views/views";
import { KeptNote } from "../../../_components/KeptNote";
import { ProductionFrame } from "../../../_components/ProductionFrame";
import { productionHref } from "../../../_data/address";
import { plural } from "../../../_data/plural";
import { requireProduction } from "../../../_data/requireProduction";
import { may } from "../../../_gate/may";
import { Files } from "./Files";
import { GarmentTable } from "./GarmentTable";
import { readQuery, writeQuery } from "./garmentQuery";
import { garmentRows } from "./garmentRows";
import { Pages } from "./Pages";
import { facetsOf, groupsOf, pageOf, selectGarments } from "./selectGarments";
import { Views } from "./Views";

type Props = {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("read", (await params).code);
  return { title: `Garments, ${view.prepared.staging.production.title}` };
};

const Garments = async ({ params, searchParams }: Props) => {
  const { member, view } = await requireProduction("read", (await params).code);
  const { production } = view.prepared.staging;
  const base = productionHref(production.code);
  const rows = garmentRows(view);
  const given = await searchParams;
  const query = readQuery(given);
  const found = selectGarments(rows, query);
  const page = pageOf(found, query.page);
  const late = rows.filter((row) => row.state === "late").length;
  const minutes = rows.reduce((total, row) => total + row.minutes, 0);
  const views = await listViews(member.company, member.user.id, production.code, "garments");
  return (
    <ProductionFrame member={member} view={view} room="/garments">
      <div className="top">
        <h1>Garments</h1>
        <p className="say">
          <b>{plural(rows.length, "garment")}</b>, {showHours(minutes)} of work at standard pace.
          {view.plan && (
            <> {late === 0 ? "None comes late." : <b className="bad">{late === 1 ? "One comes late." : `${late} come late.`}</b>}</>
          )}
        </p>
      </div>
      <KeptNote member={member} production={production.code} kept={given.kept} />
      {rows.length === 0 ? (
        <p className="board">There is no garment yet: the piece list is empty. A supervisor may bring one in.</p>
      ) : (
        <>
          <Views base={base} code={production.code} views={views} query={writeQuery({ ...query, page: 1 })} />
          <GarmentTable
            rows={page.rows}
            groups={groupsOf(found, query.group)}
            query={query}
            facets={facetsOf(rows)}
            found={found.length}
            of={rows.length}
            base={base}
            canChange={may(member.role, "wardrobe")}
            files={<Files base={base} query={query} found={found.length} of={rows.length} />}
          />
          <Pages base={base} query={query} page={page} found={found.length} />
        </>
      )}
    </ProductionFrame>
  );
};

export default Garments;
