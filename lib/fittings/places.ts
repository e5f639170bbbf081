import type { Skill } from "#lib/labour/skills";
import type { Minutes } from "#lib/units/quantities";

/** A named place of the figure: where something was seen in a fitting. Left and right are the wearer's. */
export interface FigurePlace {
  readonly code: string;
  readonly name: string;
  readonly view: "front" | "back";
  /** From the middle of the figure and down from the crown, in the units of the figure (the body is 581 high). */
  readonly x: number;
  readonly y: number;
}

type Placed = readonly [code: string, name: string, x: number, y: number];

const FRONT: readonly Placed[] = [
  ["head", "Head", 0, 22],
  ["neck", "Neck, front", 0, 84],
  ["left-shoulder", "Left shoulder or strap", 36, 100],
  ["right-shoulder", "Right shoulder or strap", -36, 100],
  ["left-armhole", "Left armhole", 54, 142],
  ["right-armhole", "Right armhole", -54, 142],
  ["bust", "Bust or chest", 0, 150],
  ["left-sleeve", "Left sleeve", 78, 210],
  ["right-sleeve", "Right sleeve", -78, 210],
  ["left-side", "Left side seam", 40, 208],
  ["right-side", "Right side seam", -40, 208],
  ["front-waist", "Centre front, waist", 0, 232],
  ["front-hip", "Hip, front", 0, 286],
  ["crotch", "Crotch", 0, 324],
  ["front-skirt", "Net or skirt, front", -44, 330],
  ["left-leg", "Left leg", 30, 384],
  ["right-leg", "Right leg", -30, 384],
  ["front-hem", "Hem, front", 0, 470],
  ["feet", "Feet", 0, 570],
];

const BACK: readonly Placed[] = [
  ["back-neck", "Neck, back", 0, 84],
  ["shoulder-blades", "Between the shoulder blades", 0, 132],
  ["fastening", "Centre back, hooks and bars", 0, 180],
  ["back-waist", "Centre back, waist", 0, 232],
  ["basque", "Basque, back", 0, 268],
  ["seat", "Seat", 0, 310],
  ["left-elastic", "Left leg elastic", -40, 338],
  ["right-elastic", "Right leg elastic", 40, 338],
  ["back-skirt", "Net or skirt, back", 0, 372],
  ["back-hem", "Hem, back", 0, 470],
];

const placesIn = (view: FigurePlace["view"], placed: readonly Placed[]): readonly FigurePlace[] =>
  placed.map(([code, name, x, y]) => ({ code, name, view, x, y }));

/** Every place, from the head down, the front before the back. */
export const FIGURE_PLACES: readonly FigurePlace[] = [...placesIn("front", FRONT), ...placesIn("back", BACK)];

/** What a place is called; a code that is no more keeps its own letters. */
export const nameOfPlace = (code: string): string => FIGURE_PLACES.find((place) => place.code === code)?.name ?? code;

/** The place nearest to a point of one view. */
export const nearestPlace = (view: FigurePlace["view"], x: number, y: number): FigurePlace => {
  const far = (place: FigurePlace) => (place.x - x) ** 2 + (place.y - y) ** 2;
  return FIGURE_PLACES.filter((place) => place.view === view).reduce((best, place) => (far(place) < far(best) ? place : best));
};

/** What an alteration usually takes at a place; a supervisor says otherwise where it is otherwise. */
export interface UsualAlteration {
  readonly skill: Skill;
  readonly minutes: Minutes;
}

const ORDINARY: UsualAlteration = { skill: "hand", minutes: 60 };

/** Hours of alterations by the place they are at (common practice, no source): a strap half an hour, sides of a boned bodice two to three ... */
const USUAL: readonly (readonly [places: readonly string[], usual: UsualAlteration])[] = [
  [["left-shoulder", "right-shoulder", "left-elastic", "right-elastic"], { skill: "hand", minutes: 30 }],
  [["left-side", "right-side", "front-waist", "back-waist", "bust"], { skill: "boned", minutes: 150 }],
  [["fastening"], { skill: "hand", minutes: 75 }],
  [["crotch"], { skill: "stretch", minutes: 90 }],
  [["left-sleeve", "right-sleeve"], { skill: "hand", minutes: 75 }],
  [["front-hem", "back-hem"], { skill: "hand", minutes: 150 }],
  [["front-skirt", "back-skirt"], { skill: "net", minutes: 60 }],
  [["head"], { skill: "millinery", minutes: 45 }],
];

export const usualAlteration = (place: string): UsualAlteration => USUAL.find(([places]) => places.includes(place))?.[1] ?? ORDINARY;
