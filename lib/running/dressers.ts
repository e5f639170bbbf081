import type { Piece } from "#lib/casting/wardrobe";
import type { Staging } from "#lib/staging/staging";
import type { Minutes } from "#lib/units/quantities";
import type { CostumeChange } from "./changes";

/** A change of costume with what it takes and who it takes. */
export interface DressedChange extends CostumeChange {
  /** Seconds for one pair of hands: everything off, then everything on. */
  readonly needs: number;
  /** Dressers with whom it fits the time; null: not even with the most that can get at one dancer. */
  readonly dressers: number | null;
}

/** Dressers for the whole evening: how many are busy at the worst moment. */
export interface Dressers {
  readonly changes: readonly DressedChange[];
  /** Changes beyond what a dancer does alone, in the time of the running order. */
  readonly tight: readonly DressedChange[];
  readonly most: number;
  readonly at: Minutes | null;
}

/** Seconds to take a piece off or put it on, one pair of hands; hooks and bones are slow. Common practice, no source: time it at the first change rehearsal. */
const SECONDS = { piece: 30, hooked: 60 } as const;
/** More get in each other's way: one minute out of a hooped gown, two helpers at most (startribune.com, facts about a winter ballet's fastest change). */
const MOST_AT_ONE = 2;

/** How long each change takes and how many dressers it needs: one dancer's own hands count, so that a change in the time alone needs none. */
export const dressers = (
  staging: Pick<Staging, "pieces" | "costumes" | "scenes" | "constructions">,
  changes: readonly CostumeChange[],
): Dressers => {
  const secondsOf = (costume: string) =>
    staging.pieces.filter((piece) => piece.costume === costume).reduce((sum, piece) => sum + secondsFor(piece, staging), 0);
  const dressed = changes.map((change): DressedChange => {
    const needs = secondsOf(change.from.costume) + secondsOf(change.to.costume);
    const available = change.minutes * 60;
    const found = Array.from({ length: MOST_AT_ONE + 1 }, (_, hands) => hands).find((hands) => needs / (hands + 1) <= available);
    return { ...change, needs, dressers: found ?? null };
  });
  const tight = dressed.filter((change) => change.dressers !== 0);
  const ends = new Map(staging.scenes.map((scene) => [scene.code, scene.starts + scene.minutes]));
  const busy = tight.map((change) => {
    const start = ends.get(change.from.scene) ?? 0;
    return { start, end: start + Math.max(1, change.minutes), dressers: change.dressers ?? MOST_AT_ONE };
  });
  const load = (at: Minutes) => busy.filter(({ start, end }) => start <= at && at < end).reduce((sum, one) => sum + one.dressers, 0);
  const [worst] = busy.map(({ start }) => start).sort((a, b) => load(b) - load(a) || a - b);
  return { changes: dressed, tight, most: worst === undefined ? 0 : load(worst), at: worst ?? null };
};

const HOOKED: readonly string[] = ["hook", "bar", "bone"];

/** A piece whose construction lists hooks, bars or bones is laced or hooked on. */
const secondsFor = (piece: Piece, { constructions }: Pick<Staging, "constructions">): number => {
  const needs = constructions.filter(({ code }) => code === piece.construction).flatMap((construction) => construction.needs);
  return needs.some(({ kind }) => HOOKED.includes(kind)) ? SECONDS.hooked : SECONDS.piece;
};
