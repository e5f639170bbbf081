import type { Metadata } from "next";
import { doublings } from "#lib/casting/doublings";
import { ProductionFrame } from "../../../_components/ProductionFrame";
import { productionHref } from "../../../_data/address";
import { requireProduction } from "../../../_data/requireProduction";
import { may } from "../../../_gate/may";
import { boardOf } from "./board";
import styles from "./Casting.module.css";
import { CastingActs } from "./CastingActs";
import { CastingGrid } from "./CastingGrid";
import { CastingSentence } from "./CastingSentence";
import { CastList } from "./CastList";
import { DoublingList } from "./DoublingList";
import { GridTable } from "./GridTable";
import { gridFacts } from "./gridFacts";
import { readAsked } from "./gridLinks";
import { gridView } from "./gridView";

type Props = {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("read", (await params).code);
  return { title: `Casting, ${view.prepared.staging.production.title}` };
};

const Casting = async ({ params, searchParams }: Props) => {
  const { member, view } = await requireProduction("read", (await params).code);
  const { staging } = view.prepared;
  const asked = readAsked(await searchParams);
  const board = boardOf(staging);
  const base = `${productionHref(staging.production.code)}/casting`;
  const facts = gridFacts(view, base, may(member.role, "measurements"));
  const grid = gridView(board, asked);
  const canCast = may(member.role, "cast");
  const doubled = doublings(board);
  return (
    <ProductionFrame member={member} view={view} room="/casting">
      <div className="top">
        <h1>Casting</h1>
        <CastingSentence board={board} doubled={doubled} />
        {canCast && <CastingActs base={base} asked={asked} />}
      </div>
      {board.roles.length === 0 ? (
        <p className="board">There is no role yet. Roles come with the files of the production, or from its costume plot.</p>
      ) : (
        <>
          <div className={styles.wide}>
            {canCast ? (
              <CastingGrid production={staging.production.code} board={board} asked={asked} facts={facts} />
            ) : (
              // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard (WCAG 2.1.1).
              <section className={styles.frame} aria-label="Who dances what" tabIndex={0}>
                <GridTable board={board} view={grid} asked={asked} facts={facts} hand={null} />
              </section>
            )}
          </div>
          <CastList board={board} view={grid} base={base} canCast={canCast} />
          <DoublingList board={board} doubled={doubled} />
        </>
      )}
    </ProductionFrame>
  );
};

export default Casting;
