import { garmentsOf } from "#lib/casting/garments";
import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import type { Minutes } from "#lib/units/quantities";
import type { Answer, Asked } from "./answer";
import type { Options } from "./options";
import { counted, listed } from "./told";

/** One garment that dancers of several casts wear. */
export interface SharedGarment {
  readonly garment: string;
  readonly piece: string;
  readonly dancers: readonly string[];
  readonly casts: readonly string[];
}

export interface Sharing {
  /** Shortest time between two performances of one day; null when none is known. */
  readonly gap: Minutes | null;
  /** Whether what is washed after the first is dry by the second. */
  readonly dry: boolean;
  readonly shared: readonly SharedGarment[];
}

/** Air-dried from the wash: common practice, no source. */
const DRY: Minutes = 480;
/** Between two shows of a day when the calls know of none: common practice, no source. */
const USUAL_GAP: Minutes = 150;

/** What two casts share, and the time between two shows of a day. */
export const sharing = (staging: Staging, piece: string | null, gap: Minutes | null): Sharing => {
  const known = gap ?? shortestGap(staging);
  const shared = garmentsOf(staging).flatMap((garment): SharedGarment[] => {
    const wearers = garment.wearers.filter(({ standing, performer }) => standing === "cast" && performer !== null);
    const dancers = [...new Set(wearers.map(({ performer }) => performer!))];
    const casts = [...new Set(wearers.map(({ cast }) => cast))];
    const isMeant = piece === null || garment.piece === piece;
    return isMeant && dancers.length > 1 && casts.length > 1 ? [{ garment: garment.number, piece: garment.piece, dancers, casts }] : [];
  });
  return { gap: known, dry: (known ?? USUAL_GAP) >= DRY, shared };
};

/** Between performances for everybody on one day. */
const shortestGap = ({ calls }: Staging): Minutes | null => {
  const shows = calls
    .filter(({ kind, performer }) => kind === "performance" && performer === null)
    .sort((a, b) => (a.date === b.date ? a.from - b.from : a.date < b.date ? -1 : 1));
  const gaps = shows.slice(1).flatMap((show, at) => (show.date === shows[at]!.date ? [show.from - shows[at]!.to] : []));
  return gaps.length === 0 ? null : Math.min(...gaps);
};

export const answerSharing = ({ plan: { staging } }: Asked, options: Options): Answer => {
  const data = sharing(staging, options.text("piece"), options.whole("gap"));
  const name = new Map(staging.performers.map((performer) => [performer.code, performer.name]));
  const gap = data.gap ?? USUAL_GAP;
  return {
    says:
      data.shared.length === 0
        ? ["No garment is shared by dancers of two casts."]
        : [
            `No: ${counted(data.shared.length, "garment is", "garments are")} shared by dancers of two casts, and agreements do not let two dancers wear one costume on one day.`,
            `Between the shows are ${showHours(gap)}${data.gap === null ? " (none is known: the usual)" : ""}: what is washed ${data.dry ? "is" : "is not"} dry by then.`,
            `Let one cast dance both shows, or have ${counted(data.shared.length, "second one", "second ones")}: ${listed(data.shared.map(({ garment }) => garment))}.`,
          ],
    tables: [
      {
        title: "Shared",
        headings: ["garment", "piece", "dancers", "casts"],
        rows: data.shared.map(({ garment, piece, dancers, casts }) => [
          garment,
          staging.pieces.find(({ code }) => code === piece)?.name ?? piece,
          listed(dancers.map((code) => name.get(code) ?? code)),
          listed(casts),
        ]),
      },
    ].filter(({ rows }) => rows.length > 0),
    reasons: [
      "The same costume is not worn by two dancers on one day: an example of dancers' agreements (published agreement, yumpu.com/en/document/view/48254552). Your own comes first.",
      "Dry: eight hours in the air (common practice, no source). What lies on the skin is washed after every wearing.",
    ],
    data,
  };
};
