import type { GarmentWork } from "#lib/breakdown/work";
import { along, dag, layerAngle, type Point, zigzag } from "./sectionNet";
import { type SectionSkirt, sectionSkirt } from "./sectionSkirt";
import { type Tack, tackLines } from "./sectionTacks";
import { type SectionOptions, type SectionWords, sectionWords } from "./sectionWords";

interface SectionLayer {
  readonly layer: number;
  readonly row: Point;
  readonly end: Point;
  readonly net: readonly Point[];
  readonly dag: readonly Point[];
  /** From the edge of the net to its line in the list. */
  readonly leader: readonly Point[];
  readonly line: number;
  readonly depth: string;
  readonly widths: number;
  readonly casing: boolean;
}

export interface Dimension {
  readonly from: Point;
  readonly to: Point;
  readonly text: string;
  /** Thin lines from the things measured to the ends. */
  readonly thin: readonly (readonly [Point, Point])[];
}

/** The cross-section of a net skirt, one half of it, in picture units: points and words only. */
export interface SectionDrawing {
  readonly width: number;
  readonly height: number;
  /** Picture units for one `Length`. */
  readonly scale: number;
  readonly centre: number;
  readonly body: readonly Point[];
  readonly waist: readonly [Point, Point];
  readonly basqueLine: readonly [Point, Point];
  readonly layers: readonly SectionLayer[];
  readonly tacks: readonly Tack[];
  readonly hoop: { readonly at: Point; readonly leader: readonly Point[] } | null;
  readonly dimensions: readonly Dimension[];
  readonly list: { readonly from: number; readonly depth: number; readonly to: number; readonly top: number; readonly foot: number };
  readonly words: SectionWords;
}

const WIDTH = 864;
const CENTRE = 40;
const WAIST_Y = 58;
/** Room for the drawing across and down; the list stands to its right. */
const ROOM = { across: 640, down: 330 };
const LIST = { from: 736, depth: 820, to: 864, top: 160 };
const LEG_DROP = 90;

/** Draws a skirt from its own computed layers and drivers; null for a garment that has no layers. */
export const sectionDrawing = (work: GarmentWork, options: SectionOptions): SectionDrawing | null => {
  const { layers } = work;
  const topDepth = Math.max(...layers.map(({ depth }) => depth));
  const lowestRow = Math.max(...layers.map(({ drop }) => drop));
  const skirt = sectionSkirt(work);
  const hipRadius = skirt.hip / (2 * Math.PI);
  if (layers.length === 0 || hipRadius <= 0 || topDepth <= 0) return null;
  const scale = Math.min(ROOM.across / (hipRadius + topDepth), ROOM.down / (skirt.basque + lowestRow));
  const words = sectionWords(layers, skirt, options);
  const hipX = CENTRE + hipRadius * scale;
  const basqueY = WAIST_Y + skirt.basque * scale;
  const step = Math.min(25, 275 / Math.max(1, layers.length - 1));
  const drawn = layers.map((layer, index): SectionLayer & { readonly angle: number } => {
    const below = layers.length - 1 - index;
    const angle = layerAngle(below);
    const row = { x: hipX, y: basqueY + layer.drop * scale };
    const end = along(row, angle, layer.depth * scale);
    const line = LIST.top + below * step;
    return {
      layer: layer.layer,
      angle,
      row,
      end,
      net: zigzag(row, angle, layer.depth * scale),
      dag: dag(end),
      leader: [
        { x: end.x + 7, y: end.y },
        { x: LIST.from - 44, y: end.y },
        { x: LIST.from - 12, y: line - 4 },
        { x: LIST.from - 4, y: line - 4 },
      ],
      line,
      depth: words.depths[index] ?? "",
      widths: layer.widths,
      casing: layer.casing,
    };
  });
  const tacked = drawn.map(({ row, angle }, index) => ({
    length: (layers[index]?.depth ?? 0) * scale,
    at: (distance: number) => along(row, angle, distance),
  }));
  const bottom = Math.max(basqueY + lowestRow * scale, ...drawn.map(({ end }) => end.y));
  const hoop = hoopAt(skirt, drawn, scale);
  const measured = { y: bottom + 100, hip: { x: hipX, y: basqueY + lowestRow * scale } };
  return {
    width: WIDTH,
    height: Math.max(measured.y + 56, LIST.top + 275 + 70),
    scale,
    centre: CENTRE,
    body: bodyOutline(skirt, scale, hipX, basqueY, basqueY + lowestRow * scale),
    waist: [
      { x: CENTRE, y: WAIST_Y },
      { x: CENTRE + (skirt.waist / (2 * Math.PI)) * scale, y: WAIST_Y },
    ],
    basqueLine: [
      { x: CENTRE, y: basqueY },
      { x: hipX, y: basqueY },
    ],
    layers: drawn.map(({ angle: _, ...layer }) => layer),
    tacks: skirt.tacks > 0 ? tackLines(tacked) : [],
    hoop,
    dimensions: dimensions(drawn.at(-1)!, hoop?.at ?? null, measured, words),
    list: { ...LIST, foot: LIST.top + (layers.length - 1) * step },
    words,
  };
};

/** Half the body: waist, basque swelling to the hip, straight down the rows, and the leg back to the centre. */
const bodyOutline = (skirt: SectionSkirt, scale: number, hipX: number, basqueY: number, lowestY: number): readonly Point[] => {
  const waistX = CENTRE + (skirt.waist / (2 * Math.PI)) * scale;
  const swell = Array.from({ length: 13 }, (_, index) => {
    const share = index / 12;
    return { x: waistX + (hipX - waistX) * (1 - Math.cos(share * Math.PI)) * 0.5, y: WAIST_Y + (basqueY - WAIST_Y) * share };
  });
  return [{ x: CENTRE, y: WAIST_Y }, ...swell, { x: hipX, y: lowestY + 4 }, { x: CENTRE, y: lowestY + LEG_DROP }];
};

const hoopAt = (
  skirt: SectionSkirt,
  layers: readonly (SectionLayer & { readonly angle: number })[],
  scale: number,
): SectionDrawing["hoop"] => {
  const layer = layers.find((each) => each.layer === skirt.hoop?.layer);
  if (!skirt.hoop || !layer) return null;
  const out = ((skirt.hoop.ring - skirt.hip) / (2 * Math.PI)) * scale;
  // A ring cannot lie beyond the net that carries it: where figures by hand say so, it is drawn at the edge.
  const edge = Math.hypot(layer.end.x - layer.row.x, layer.end.y - layer.row.y);
  const at = along(layer.row, layer.angle, Math.min(out / Math.cos(layer.angle), edge));
  const below = Math.max(...layers.map(({ end }) => end.y)) + 40;
  return {
    at,
    leader: [
      { x: at.x + 1, y: at.y + 7 },
      { x: at.x + 26, y: below },
      { x: at.x + 34, y: below },
    ],
  };
};

const dimensions = (
  top: SectionLayer,
  hoop: Point | null,
  measured: { readonly y: number; readonly hip: Point },
  words: SectionWords,
): readonly Dimension[] => {
  const level = (from: Point, to: Point, y: number, text: string): Dimension => ({
    from: { x: from.x, y },
    to: { x: to.x, y },
    text,
    thin: [from, to].map(
      (point) =>
        [
          { x: point.x, y: point.y + Math.sign(y - point.y) * 9 },
          { x: point.x, y: y + Math.sign(y - point.y) * 6 },
        ] as const,
    ),
  });
  const above = Math.max(16, Math.min(top.row.y, top.end.y) - 42);
  return [
    level(top.row, top.end, above, words.topDepth),
    ...(hoop ? [level(measured.hip, hoop, measured.y, words.toHoop)] : []),
    level({ x: CENTRE, y: measured.hip.y + LEG_DROP }, top.end, measured.y + 36, words.reach),
  ];
};
