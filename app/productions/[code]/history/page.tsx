import type { Metadata } from "next";
import Link from "next/link";
import { z } from "zod";
import { readHistory } from "#prisma/editing/history";
import { ProductionFrame } from "../../../_components/ProductionFrame";
import { productionHref } from "../../../_data/address";
import { requireProduction } from "../../../_data/requireProduction";
import { HistoryEntry } from "./HistoryEntry";
import { historyEntries } from "./historyEntries";

type Props = {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<{ readonly before?: string | string[] }>;
};

const A_PAGE = 50;

export const generateMetadata = async ({ params }: Pick<Props, "params">): Promise<Metadata> => {
  const { view } = await requireProduction("history", (await params).code);
  return { title: `History, ${view.prepared.staging.production.title}` };
};

const History = async ({ params, searchParams }: Props) => {
  const { member, view } = await requireProduction("history", (await params).code);
  const { production } = view.prepared.staging;
  const before = z.uuid().safeParse((await searchParams).before);
  const lines = await readHistory(member.company, production.code, { most: A_PAGE, ...(before.success ? { before: before.data } : {}) });
  const days = historyEntries(lines, production, member.role);
  const last = lines.length === A_PAGE ? lines.at(-1) : undefined;
  const href = `${productionHref(production.code)}/history`;
  return (
    <ProductionFrame member={member} view={view} room="/history">
      <div className="top">
        <h1>History</h1>
        <p className="say">
          Who changed what, and when. Whatever was changed can be put back, unless somebody has changed the same row since: then theirs is
          shown beside it, and nothing is lost. Ctrl+Z puts back what you did last, Ctrl+Shift+Z does it again.
        </p>
      </div>
      {days.length === 0 && <p className="board">Nothing has been written down {before.success ? "before that" : "yet"}.</p>}
      {days.map(({ day, entries }) => (
        <section key={day} className="part" aria-label={day}>
          <header>
            <h2>{day}</h2>
          </header>
          <ol className="lines">
            {entries.map((entry) => (
              <HistoryEntry key={entry.id} entry={entry} production={production.code} />
            ))}
          </ol>
        </section>
      ))}
      <nav className="acts part" aria-label="Pages">
        {before.success && <Link href={href}>The newest</Link>}
        {last && <Link href={`${href}?before=${last.id}`}>Older</Link>}
      </nav>
    </ProductionFrame>
  );
};

export default History;
