import type { CutPattern, CutPiece } from "#lib/cutting/cuttingPlan";
import type { Length } from "#lib/units/quantities";
import { lineEnds } from "./cuttingLines";

/** What a picture of one stock needs to know of its cloth, and of the page. */
export interface CuttingSize {
  /** Width of the cloth; null for rods, coils and tapes, which are drawn as a bar so high. */
  readonly cuttable: Length | null;
  readonly bar: number;
  /** Picture units across the page. */
  readonly width: number;
  /** Picture units for one unit of length, along and across alike. */
  readonly scale: number;
  /** Between two marks of the tape, and those between them: a yard and its quarters, a metre and its tenths. */
  readonly tape: { readonly every: Length; readonly parts: number };
}

export interface DrawnPiece {
  readonly piece: CutPiece;
  /** Within its line. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** It goes on in the next line, being longer than the page. */
  readonly broken: boolean;
}

/** Alike pieces one after the other: labelled once. */
export interface DrawnGroup {
  readonly label: string;
  readonly length: Length;
  readonly breadth: Length | null;
  readonly count: number;
  readonly garments: readonly string[];
  /** Middle of the group. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

export interface CuttingLine {
  /** Stretch of the stock it shows. */
  readonly from: Length;
  readonly to: Length;
  readonly width: number;
  readonly height: number;
  readonly pieces: readonly DrawnPiece[];
  readonly rests: readonly {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
    readonly kept: boolean;
  }[];
  readonly groups: readonly DrawnGroup[];
  /** `mark` is how many whole tapes from the cut end; null for a part between. */
  readonly ticks: readonly { readonly x: number; readonly mark: number | null }[];
  /** The stock goes on before or after: drawn broken. */
  readonly goesOn: boolean;
}

/** The scale at which the cloth is so high on the page; a stock of `length` without breadth fills the page's width. */
export const cuttingScale = (cuttable: Length | null, length: Length, height: number, width: number): number =>
  cuttable === null ? width / Math.max(1, length) : height / cuttable;

/**
 * One stock of a cutting plan at true scale, from the cut end, broken between pieces into lines that fit the page. Selvedges are above and
 * below. `end` is where the stock ends; what one long length is cut from ends with its last piece.
 */
export const cuttingPicture = ({ pieces, offcuts }: CutPattern, end: Length, size: CuttingSize): readonly CuttingLine[] => {
  const { scale, cuttable, bar } = size;
  const ends = lineEnds(pieces, end, Math.max(1, Math.floor(size.width / scale)));
  const height = cuttable === null ? bar : cuttable * scale;
  return ends.map((to, at) => {
    const from = ends[at - 1] ?? 0;
    const box = (one: { x: Length; y: Length; length: Length; breadth: Length | null }) => ({
      x: (Math.max(from, one.y) - from) * scale,
      width: (Math.min(to, one.y + one.length) - Math.max(from, one.y)) * scale,
      ...(cuttable === null ? { y: 0, height: bar } : { y: one.x * scale, height: (one.breadth ?? cuttable) * scale }),
    });
    const isHere = (one: { y: Length; length: Length }) => one.y < to && one.y + one.length > from;
    const drawn = pieces.filter(isHere).map((piece): DrawnPiece => ({ piece, ...box(piece), broken: piece.y + piece.length > to }));
    return {
      ...{ from, to, height, width: (to - from) * scale },
      pieces: drawn,
      rests: offcuts.filter(isHere).map((rest) => ({ ...box(rest), kept: rest.kept })),
      groups: groupsOf(drawn),
      ticks: ticksOf(from, to, size),
      goesOn: at < ends.length - 1,
    };
  });
};

const groupsOf = (drawn: readonly DrawnPiece[]): readonly DrawnGroup[] => {
  const runs: DrawnPiece[][] = [];
  const isAlike = ({ piece: a }: DrawnPiece, { piece: b }: DrawnPiece) =>
    a.label === b.label && a.length === b.length && a.breadth === b.breadth && a.turned === b.turned;
  for (const one of [...drawn].sort((a, b) => a.x - b.x || a.y - b.y)) {
    const last = runs.at(-1);
    if (last && isAlike(last[0]!, one)) last.push(one);
    else runs.push([one]);
  }
  return runs.map((run) => {
    const { label, length, breadth } = run[0]!.piece;
    const left = Math.min(...run.map(({ x }) => x));
    const right = Math.max(...run.map(({ x, width }) => x + width));
    const top = Math.min(...run.map(({ y }) => y));
    const bottom = Math.max(...run.map(({ y, height }) => y + height));
    const garments = [...new Set(run.map(({ piece }) => piece.garment))];
    return { label, length, breadth, count: run.length, garments, x: (left + right) / 2, y: (top + bottom) / 2, width: right - left };
  });
};

const ticksOf = (from: Length, to: Length, { scale, tape: { every, parts } }: CuttingSize): CuttingLine["ticks"] => {
  const step = every / parts;
  const first = Math.ceil(from / step);
  return Array.from({ length: Math.floor(to / step) - first + 1 }, (_, at) => {
    const part = first + at;
    return { x: (part * step - from) * scale, mark: part % parts === 0 ? part / parts : null };
  });
};
