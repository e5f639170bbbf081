import { type CastCell, cellKey, type Recast } from "#lib/casting/castCell";
import type { CastingBoard } from "#lib/casting/castingGrid";
import { CastCells } from "#lib/casting/castingGrid";
import type { Doubling } from "#lib/casting/doublings";
import { listed } from "../../../_data/plural";

type Named = Pick<CastingBoard, "performers" | "roles" | "scenes">;

const nameIn = (list: readonly { readonly code: string; readonly name: string }[], code: string): string =>
  list.find((one) => one.code === code)?.name ?? code;

/** `Reeds 3`, or the role alone where it has one place. */
export const placeWords = ({ roles }: Pick<Named, "roles">, { role, place }: Pick<CastCell, "role" | "place">): string => {
  const found = roles.find(({ code }) => code === role);
  return (found?.places ?? 1) > 1 ? `${found?.name ?? role} ${place}` : (found?.name ?? role);
};

export const performerWords = ({ performers }: Pick<Named, "performers">, codes: readonly string[]): string =>
  listed(codes.map((code) => nameIn(performers, code)));

/** Names of a cell as they are typed and copied. */
export const typedNames = ({ performers }: Pick<Named, "performers">, codes: readonly string[]): string =>
  codes.map((code) => nameIn(performers, code)).join("; ");

/** `Emmelin Roke dances The Heron Queen in the third cast, in place of Saskia Thornby.` */
export const recastWords = (board: CastingBoard, change: Recast): string => {
  const was = new CastCells(board).at(change).performers;
  const [place, cast] = [placeWords(board, change), `the ${change.cast} cast`];
  const now = change.performers;
  if (now === null) return `${place} is not danced in ${cast}.`;
  if (change.standing === "cover")
    return now.length === 0
      ? `Nobody stands by for ${place} in ${cast}.`
      : `${performerWords(board, now)} ${now.length > 1 ? "stand" : "stands"} by for ${place} in ${cast}.`;
  const instead = was && was.length > 0 ? `, in place of ${performerWords(board, was)}` : "";
  return now.length === 0
    ? `Nobody is cast for ${place} in ${cast} yet${instead}.`
    : `${performerWords(board, now)} dances ${place} in ${cast}${instead}.`;
};

/** Title of an edit in the history. */
export const recastTitle = (board: CastingBoard, changes: readonly Recast[]): string => {
  const [first] = changes;
  const cells = new Set(changes.map(cellKey)).size;
  return cells === 1 && first ? `Casting: ${placeWords(board, first)}, ${first.cast}` : `Casting: ${cells} cells`;
};

/** Short, for a cell: `also Reeds 3, at one time`. */
export const doublingNote = (board: Named, doubling: Doubling, here: Pick<CastCell, "role" | "place">): string => {
  const [one, other] = doubling.places;
  const elsewhere = one.role === here.role && one.place === here.place ? other : one;
  const scene = doubling.scenes.map((code) => nameIn(board.scenes, code))[0];
  if (doubling.kind === "clash") return `two places at once: ${scene}`;
  if (doubling.kind === "cover")
    return elsewhere.standing === "cast"
      ? `dances ${placeWords(board, elsewhere)} then`
      : `stands by for ${placeWords(board, elsewhere)} then`;
  return `also ${placeWords(board, elsewhere)}`;
};

/** In full, for a list: who, which two places, when. */
export const doublingSentence = (board: Named, { performer, cast, places: [one, other], kind, scenes }: Doubling): string => {
  const when = listed(scenes.map((code) => nameIn(board.scenes, code)));
  const who = performerWords(board, [performer]);
  const [first, second] = [placeWords(board, one), placeWords(board, other)];
  if (kind === "clash") return `${who}, ${cast} cast: ${first} and ${second} are both on in ${when}.`;
  if (kind === "apart") return `${who}, ${cast} cast: dances ${first} and ${second}, never at one time.`;
  const [danced, covered] = one.standing === "cast" ? [first, second] : [second, first];
  return `${who}, ${cast} cast: stands by for ${covered}; called on, ${danced} is empty in ${when}.`;
};
