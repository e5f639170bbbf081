import type { Length } from "#lib/units/quantities";
import type { CutPiece } from "./cuttingPlan";
import type { Goods } from "./layOut";
import type { Piece } from "./pieces";
import { type CutQuestion, type FoundCuts, inStripOrder, stripQuestion } from "./question";
import { shortestStrip } from "./strip/shortestStrip";
import { emptyLie, skyline } from "./strip/skyline";
import type { Placed, Rectangle } from "./strip/strip";
import { stripBound } from "./strip/stripBound";

/** Pieces laid at once where they fit best: beyond this rows must do until a search has found better, since a page waits. */
const MOST_AT_ONCE = 250;

export interface OnRoll {
  /** Pieces of each stock where they lie; none when there are too many to lay at once. */
  readonly stocks: readonly (readonly CutPiece[])[];
  /** For one long length, one below which no plan can be. */
  readonly lengthBound: Length;
  readonly searched: boolean;
  readonly question: CutQuestion | null;
}

export type OnCloth = Goods & { readonly cuttable: Length };

/** Pieces laid where they fit best, not in rows. Each takes the cut beside it and after it. */
export const onRoll = (pieces: readonly Piece[], goods: OnCloth, found: FoundCuts): OnRoll => {
  const { cuttable, kerf, stock, turned } = goods;
  const width = cuttable + kerf;
  const sizes = pieces.map(({ length, breadth }) => ({ width: (breadth ?? cuttable) + kerf, height: length + kerf }));
  const job = { width, pieces: sizes, turned };
  const lengthBound = Math.max(0, stripBound(job) - kerf);
  if (stock !== null && pieces.length > MOST_AT_ONCE) return { stocks: [], lengthBound, searched: false, question: null };
  if (stock !== null) return { stocks: boltByBolt(pieces, sizes, goods, stock + kerf), lengthBound, searched: false, question: null };
  const question = stripQuestion(sizes, width, turned);
  const answer = found(question);
  if (answer?.kind === "strip") {
    const order = [...sizes.keys()].sort((a, b) => inStripOrder(sizes[a]!, sizes[b]!));
    const placed = order.map((index, at) => {
      const [x, y, across, height] = answer.placed[at]!;
      return lies(pieces[index]!, { x, y, width: across, height }, goods);
    });
    const bound = Math.max(lengthBound, answer.bound - kerf);
    return { stocks: [placed], lengthBound: bound, searched: true, question: answer.used - kerf > bound ? question : null };
  }
  if (pieces.length > MOST_AT_ONCE) return { stocks: [], lengthBound, searched: false, question };
  const { placed } = bestAtOnce(job);
  return { stocks: [placed.map((place, at) => lies(pieces[at]!, place, goods))], lengthBound, searched: false, question };
};

/** The best of the first plans a search looks at, without searching. */
const bestAtOnce = (job: Parameters<typeof shortestStrip>[0]) => {
  const search = shortestStrip(job, 1);
  let step = search.next();
  for (let tries = 1; tries < 4 && !step.done; tries++) step = search.next();
  return step.value;
};

/** One bolt after the other is filled from its cut end, broad and long pieces first. */
const boltByBolt = (pieces: readonly Piece[], sizes: readonly Rectangle[], goods: OnCloth, limit: Length): OnRoll["stocks"] => {
  const stocks: CutPiece[][] = [];
  let left = [...sizes.keys()].sort((a, b) => sizes[b]!.width * sizes[b]!.height - sizes[a]!.width * sizes[a]!.height || a - b);
  while (left.length > 0) {
    const lie = emptyLie(sizes.length);
    const across = Int32Array.from(sizes, (size) => size.width);
    const up = Int32Array.from(sizes, (size) => size.height);
    skyline({ across, up }, Int32Array.from(left), { width: goods.cuttable + goods.kerf, limit, turned: goods.turned }, lie);
    const laid = left.filter((index) => lie.up[index]! >= 0);
    if (laid.length === 0) return [];
    stocks.push(
      laid.map((index) => {
        const { width, height } = sizes[index]!;
        const size = lie.turned[index] === 1 ? { width: height, height: width } : { width, height };
        return lies(pieces[index]!, { x: lie.across[index]!, y: lie.up[index]!, ...size }, goods);
      }),
    );
    left = left.filter((index) => lie.up[index]! < 0);
  }
  return stocks;
};

const lies = (piece: Piece, { x, y, width, height }: Placed, { cuttable, kerf }: OnCloth): CutPiece => {
  const turned = height - kerf !== piece.length || width - kerf !== (piece.breadth ?? cuttable);
  const breadth = !turned && piece.breadth === null ? null : width - kerf;
  return { ...piece, x, y, length: height - kerf, breadth, turned, row: null };
};
