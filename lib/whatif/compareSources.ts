import { addDays } from "#lib/calendar/days";
import { type Piece, SOURCES, type Source } from "#lib/casting/wardrobe";
import { type PlanOptions, planStaging } from "#lib/planning/planStaging";
import type { Staging } from "#lib/staging/staging";
import { type SourceFigures, sourceFigures } from "./sourceFigures";
import { type Quotes, sourceVariant } from "./sourceVariant";

/** One piece from one source: what it takes, or why it cannot be had so. */
export interface SourceRow {
  readonly source: Source;
  /** Whether the piece list has it so. */
  readonly current: boolean;
  readonly why: readonly string[];
  /** Null when it cannot be had so. */
  readonly figures: SourceFigures | null;
}

/** Make, pull, alter, hire and buy side by side for one piece. Each that its data allows is planned with everything else the workroom has to do. */
export const compareSources = async (
  staging: Staging,
  piece: Piece,
  quotes: Quotes,
  options: PlanOptions,
): Promise<readonly SourceRow[]> => {
  const rows: SourceRow[] = [];
  for (const source of SOURCES) {
    const variant = sourceVariant(staging, piece, source, quotes);
    const current = source === piece.source;
    if (!variant.ok) {
      rows.push({ source, current, why: [variant.error], figures: null });
      continue;
    }
    const comes = source === "hire" || source === "buy";
    const days = comes ? (quotes[source]?.days ?? null) : 0;
    const there = [addDays(options.today, days ?? 0), staging.production.starts].sort()[1]!;
    const arrives = (garment: { readonly piece: string }) => (comes && garment.piece === piece.code ? there : null);
    const plan = await planStaging(variant.value.staging, { ...options, arrives });
    const { figures, idle, nobody } = sourceFigures(plan, piece.code, there);
    const why = [
      variant.value.why,
      ...(days === null ? ["No delivery time is known: taken as there at once."] : []),
      ...(idle ? ["The workroom has nothing to do on it."] : []),
      ...nobody.map((skill) => `Nobody has the skill ${skill}: its minutes cost nothing here.`),
    ];
    rows.push({ source, current, why, figures });
  }
  return rows;
};
