import { breakDown } from "#lib/breakdown/breakDown";
import type { GarmentWork, Need } from "#lib/breakdown/work";
import { garmentsOf } from "#lib/casting/garments";
import type { Garment } from "#lib/casting/wardrobe";
import { purchaseList } from "#lib/purchasing/purchaseList";
import type { Staging } from "#lib/staging/staging";
import type { Length, MinorUnits, Minutes } from "#lib/units/quantities";
import { standardLabour } from "./labourRate";
import { type MaterialChange, materialChanges } from "./materialChanges";

/** What some garments take: standard work at likely minutes, before batches and plans. */
export interface PieceFigures {
  readonly garments: number;
  readonly minutes: Minutes;
  readonly fittings: number;
  /** Off the roll, before waste and spare. */
  readonly net: Length;
  /** At the mean cost of the makers who have each skill. */
  readonly labour: MinorUnits;
  /** Price of those that are hired or bought. */
  readonly price: MinorUnits;
}

/** One line of the piece list before and after. Of a set, lines that were not changed themselves may follow. */
export interface PieceLine {
  readonly piece: string;
  readonly name: string;
  readonly before: PieceFigures;
  readonly after: PieceFigures;
}

export interface PieceEffect {
  readonly lines: readonly PieceLine[];
  readonly before: PieceFigures;
  readonly after: PieceFigures;
  /** By so much the lines of the purchase list change, carriage apart: packs are bought whole, so that it may be nothing. */
  readonly goods: MinorUnits;
  /** Only those that change. */
  readonly materials: readonly MaterialChange[];
  /** What is said about the garments afterwards and was not before, for example a parameter outside its limits. */
  readonly notes: readonly { readonly piece: string; readonly text: string }[];
  /** Number from which garments get other numbers, or fall away; null when all keep theirs. */
  readonly renumberedFrom: string | null;
}

/** What a change of the piece list does, without levelling. `works` are those of `before`, of every garment. */
export const pieceEffect = (before: Staging, after: Staging, works: readonly GarmentWork[]): PieceEffect => {
  const touched = touchedPieces(before, after);
  const old = madeOf(before, touched);
  const now = madeOf(after, touched);
  const materials = materialChanges(needsOf(old), needsOf(now)).filter((change) => change.before !== change.after);
  const asked = new Set(materials.map(({ material }) => material));
  const askingFor = (work: GarmentWork): GarmentWork => ({ ...work, needs: work.needs.filter(({ material }) => asked.has(material)) });
  const others = asked.size === 0 ? [] : works.filter(({ garment }) => !old.numbers.has(garment)).map(askingFor);
  const costOf = (staging: Staging, { works: own }: Made): MinorUnits => {
    if (asked.size === 0) return 0;
    const { lines } = purchaseList(staging, [...others, ...own.map(askingFor)], () => null).purchase;
    return lines.reduce((sum, { cost }) => sum + cost, 0);
  };
  const lines = after.pieces
    .filter(({ code }) => touched.has(code))
    .map(({ code, name }) => ({ piece: code, name, before: figuresOf(before, old, code), after: figuresOf(after, now, code) }));
  return {
    lines,
    before: figuresOf(before, old),
    after: figuresOf(after, now),
    goods: costOf(after, now) - costOf(before, old),
    materials,
    notes: newNotes(old, now),
    renumberedFrom: renumberedFrom(old.all, now.all),
  };
};

/** Pieces that differ, and all that share a set with one: learning and prototypes go by the order in the set. */
const touchedPieces = (before: Staging, after: Staging): ReadonlySet<string> => {
  const was = new Map(before.pieces.map((piece) => [piece.code, piece]));
  const differ = after.pieces.filter((piece) => JSON.stringify(piece) !== JSON.stringify(was.get(piece.code)));
  const sets = new Set([...differ, ...differ.flatMap(({ code }) => was.get(code) ?? [])].flatMap(({ set }) => set ?? []));
  const codes = new Set(differ.map(({ code }) => code));
  return new Set(after.pieces.filter(({ code, set }) => codes.has(code) || (set !== null && sets.has(set))).map(({ code }) => code));
};

interface Made {
  readonly all: readonly Garment[];
  readonly garments: readonly Garment[];
  readonly numbers: ReadonlySet<string>;
  readonly works: readonly GarmentWork[];
}

const madeOf = (staging: Staging, pieces: ReadonlySet<string>): Made => {
  const all = garmentsOf(staging);
  const garments = all.filter(({ piece }) => pieces.has(piece));
  return { all, garments, numbers: new Set(garments.map(({ number }) => number)), works: breakDown(staging, garments) };
};

const needsOf = ({ works }: Made): readonly Need[] => works.flatMap(({ needs }) => needs);

/** Of one piece, or of all of them. */
const figuresOf = ({ makers, materials }: Staging, made: Made, piece?: string): PieceFigures => {
  const at = made.garments.flatMap((garment, index) => (piece === undefined || garment.piece === piece ? [index] : []));
  const works = at.map((index) => made.works[index]!);
  const nets = new Set(materials.filter(({ kind }) => kind === "net").map(({ code }) => code));
  const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0);
  return {
    garments: at.length,
    minutes: sum(works.flatMap(({ operations }) => operations.map(({ minutes }) => minutes[1]))),
    fittings: sum(works.map(({ fittings }) => fittings.length)),
    net: sum(works.flatMap(({ needs }) => needs.filter(({ material }) => nets.has(material)).map(({ quantity }) => quantity))),
    labour: standardLabour(makers, works).cost,
    price: sum(at.map((index) => made.garments[index]!.price ?? 0)),
  };
};

const newNotes = (old: Made, now: Made): PieceEffect["notes"] => {
  const said = (made: Made) => made.works.flatMap(({ notes }, at) => notes.map(({ text }) => ({ piece: made.garments[at]!.piece, text })));
  const known = new Set(said(old).map((note) => JSON.stringify(note)));
  const fresh = new Map(said(now).map((note) => [JSON.stringify(note), note]));
  return [...fresh].filter(([key]) => !known.has(key)).map(([, note]) => note);
};

const renumberedFrom = (old: readonly Garment[], now: readonly Garment[]): string | null => {
  const body = (garment: Garment | undefined) =>
    JSON.stringify([garment?.number, garment?.piece, garment?.wearers[0]?.cast, garment?.wearers[0]?.place]);
  return old.find((garment, index) => body(garment) !== body(now[index]))?.number ?? null;
};
