import { ascending, group } from "d3-array";
import type { CutPattern, CuttingPlan } from "#lib/cutting/cuttingPlan";
import type { Staging } from "#lib/staging/staging";

/** Patterns that are cut alike, piece for piece, whatever garment each piece is for. */
export interface AlikePatterns {
  readonly pattern: CutPattern;
  /** Stocks cut so. */
  readonly times: number;
  readonly garments: readonly string[];
}

const shapeOf = ({ pieces }: CutPattern): string =>
  JSON.stringify(pieces.map(({ x, y, length, breadth, label }) => [x, y, length, breadth, label]));

export const alikePatterns = ({ patterns }: CuttingPlan): readonly AlikePatterns[] =>
  [...group(patterns, shapeOf).values()].map((alike) => ({
    pattern: alike[0] as CutPattern,
    times: alike.reduce((sum, { times }) => sum + times, 0),
    garments: [...new Set(alike.flatMap(({ pieces }) => pieces.map(({ garment }) => garment)))].sort(ascending),
  }));

/** A material's cutting plans, from the shelf first. */
export interface MaterialCutting {
  readonly material: string;
  readonly name: string;
  readonly colour: string;
  readonly plans: readonly CuttingPlan[];
}

export const cuttingByMaterial = (cutting: readonly CuttingPlan[], { materials }: Pick<Staging, "materials">): readonly MaterialCutting[] =>
  [...group(cutting, ({ material }) => material)]
    .map(([code, plans]) => {
      const material = materials.find((each) => each.code === code);
      return { material: code, name: material?.name ?? code, colour: material?.colour ?? "", plans };
    })
    .sort((a, b) => ascending(a.name, b.name) || ascending(a.material, b.material));

/** One line of the table behind a picture: alike pieces together. */
export interface PieceRow {
  readonly label: string;
  readonly length: number;
  readonly breadth: number | null;
  readonly count: number;
  readonly garments: readonly string[];
}

/** All pieces of a plan, the longest first. */
export const pieceRows = ({ patterns }: CuttingPlan): readonly PieceRow[] => {
  const pieces = patterns.flatMap((pattern) => pattern.pieces.map((piece) => ({ piece, times: pattern.times })));
  return [...group(pieces, ({ piece: { label, length, breadth } }) => JSON.stringify([label, length, breadth])).values()]
    .map((alike) => {
      const { label, length, breadth } = (alike[0] as (typeof pieces)[number]).piece;
      const garments = [...new Set(alike.map(({ piece }) => piece.garment))].sort(ascending);
      return { label, length, breadth, count: alike.reduce((sum, { times }) => sum + times, 0), garments };
    })
    .sort((a, b) => b.length - a.length || ascending(a.label, b.label) || (b.breadth ?? 0) - (a.breadth ?? 0));
};
