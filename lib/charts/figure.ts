import { MEASUREMENTS, type Measurement } from "#lib/measurements/measurement";
import { FIGURE_MARKS, type FigureMark } from "./figureMarks";
import type { Point } from "./sectionNet";

/** A note of the figure: the way of the tape, and a numbered disc beside the body with a line to it. */
interface FigureNote {
  readonly measurement: Measurement;
  /** Its number in the list of all measurements. */
  readonly number: number;
  /** Path of the tape, to be drawn over the outline. */
  readonly way: string;
  readonly disc: Point;
  readonly leader: readonly [Point, Point];
}

/** One neutral outline, front or back, with its notes; no figure of any body is on it. */
interface FigureView {
  readonly view: FigureMark["view"];
  readonly width: number;
  readonly height: number;
  readonly outline: readonly string[];
  /** Fine lines that tell the back from the front. */
  readonly lines: readonly string[];
  readonly notes: readonly FigureNote[];
}

const WIDTH = 360;
const HEIGHT = 640;
const MIDDLE = WIDTH / 2;
const CROWN = 26;
/** Discs are 44 across for a finger, and stand no nearer to each other. */
export const DISC = 44;
const EDGE = DISC / 2 + 4;

/** Half of the outline, from the neck by arm and leg to the crotch, right of the middle. */
const HALF: readonly (readonly [number, number])[] = [
  [11, 66],
  [13, 84],
  [36, 95],
  [60, 104],
  [71, 124],
  [78, 165],
  [84, 204],
  [92, 244],
  [98, 280],
  [106, 306],
  [103, 330],
  [94, 326],
  [88, 284],
  [76, 246],
  [67, 206],
  [58, 172],
  [50, 152],
  [50, 174],
  [45, 200],
  [38, 232],
  [45, 258],
  [54, 292],
  [55, 334],
  [48, 384],
  [39, 428],
  [39, 464],
  [32, 516],
  [24, 552],
  [32, 572],
  [38, 581],
  [12, 581],
  [11, 552],
  [10, 516],
  [8, 464],
  [10, 426],
  [6, 372],
  [3, 318],
];

const place = ({ x, y }: Point): Point => ({ x: MIDDLE + x, y: CROWN + y });

/** Figures `front` and `back`, with the measurements asked for (all without `of`). */
export const figureViews = (of: readonly Measurement[] = MEASUREMENTS): readonly FigureView[] =>
  (["front", "back"] as const).map((view) => {
    const marks = FIGURE_MARKS.filter((mark) => mark.view === view && of.includes(mark.measurement));
    const notes = (["left", "right"] as const).flatMap((side) => column(marks.filter((mark) => mark.side === side)));
    return { view, width: WIDTH, height: HEIGHT, outline: OUTLINE, lines: LINES[view], notes };
  });

const column = (marks: readonly FigureMark[]): readonly FigureNote[] => {
  const anchored = marks.map((mark) => ({ mark, anchor: anchorOf(mark) })).sort((a, b) => a.anchor.y - b.anchor.y);
  const heights = spread(anchored.map(({ anchor }) => anchor.y));
  return anchored.map(({ mark, anchor }, index) => {
    const disc = { x: mark.side === "left" ? EDGE : WIDTH - EDGE, y: heights[index]! };
    return {
      measurement: mark.measurement,
      number: MEASUREMENTS.indexOf(mark.measurement) + 1,
      way: wayOf(mark.way),
      disc,
      leader: [{ x: disc.x + (mark.side === "left" ? 13 : -13), y: disc.y }, anchor],
    };
  });
};

/** Where the line from the disc meets the tape: its end on that side, or the middle of one that runs down. */
const anchorOf = ({ way, side }: FigureMark): Point => {
  const [first, last] = [way[0]!, way.at(-1)!];
  if (Math.abs(first.x - last.x) > Math.abs(first.y - last.y)) {
    const outer = side === "left" ? Math.min(first.x, last.x) : Math.max(first.x, last.x);
    return place(first.x === outer ? first : last);
  }
  const middle = way.length > 2 ? way[Math.floor(way.length / 2)]! : { x: (first.x + last.x) / 2, y: (first.y + last.y) / 2 };
  return place(middle);
};

/** Heights in order, no two nearer than a disc, none outside the picture. */
const spread = (wanted: readonly number[]): readonly number[] => {
  const set: number[] = [];
  for (const y of wanted) set.push(Math.max(y, EDGE, (set.at(-1) ?? -DISC) + DISC));
  let below = HEIGHT - EDGE + DISC;
  for (let at = set.length - 1; at >= 0; at--) {
    below = Math.min(set[at]!, below - DISC);
    set[at] = below;
  }
  return set;
};

const wayOf = (way: readonly Point[]): string => {
  const [from, to] = [place(way[0]!), place(way.at(-1)!)];
  // A tape that goes round hangs a little in front.
  if (way.length === 2 && way[0]!.y === way[1]!.y) return `M${from.x} ${from.y}Q${(from.x + to.x) / 2} ${from.y + 8} ${to.x} ${to.y}`;
  return smooth(way.map(place));
};

/** A curve through all points (Catmull and Rom's, as cubic arcs). */
const smooth = (points: readonly Point[]): string =>
  points
    .slice(1)
    .map((to, index) => {
      const from = points[index]!;
      const [before, after] = [points[index - 1] ?? from, points[index + 2] ?? to];
      const one = { x: from.x + (to.x - before.x) / 6, y: from.y + (to.y - before.y) / 6 };
      const two = { x: to.x - (after.x - from.x) / 6, y: to.y - (after.y - from.y) / 6 };
      return `C${[one.x, one.y, two.x, two.y, to.x, to.y].map((part) => Math.round(part * 10) / 10).join(" ")}`;
    })
    .reduce((path, arc) => path + arc, `M${points[0]!.x} ${points[0]!.y}`);

const OUTLINE: readonly string[] = (() => {
  const right = HALF.map(([x, y]) => place({ x, y }));
  const left = HALF.toReversed().map(([x, y]) => place({ x: -x, y }));
  const head = place({ x: 0, y: 34 });
  const oval = `M${head.x - 25} ${head.y}a25 34 0 1 1 50 0a25 34 0 1 1 -50 0z`;
  return [`${smooth([...right, ...left])}z`, oval];
})();

const LINES: Readonly<Record<FigureMark["view"], readonly string[]>> = {
  front: [],
  back: ["M150 152q16 12 12 40", "M210 152q-16 12 -12 40"],
};
