import { MEDIAN_BODIES } from "#lib/invented/bodies";
import NAMES from "./names.json";

/** A size group against its median body; students are smaller all over. */
export interface Size {
  readonly code: string;
  readonly name: string;
  readonly scale: number;
  readonly median: (typeof MEDIAN_BODIES)["W"];
}

const sizes = (median: Size["median"], letter: string, who: string): Size[] => [
  { code: `${letter}S`, name: `${who}, small`, scale: 0.96, median },
  { code: `${letter}M`, name: `${who}, medium`, scale: 1, median },
  { code: `${letter}L`, name: `${who}, tall`, scale: 1.04, median },
];

const WOMEN = sizes(MEDIAN_BODIES.W, "W", "Women");
const MEN = sizes(MEDIAN_BODIES.M, "M", "Men");
const STUDENTS: readonly Size[] = [{ code: "J", name: "Students of the school", scale: 0.84, median: MEDIAN_BODIES.W }];
export const SIZES: readonly Size[] = [...WOMEN, ...MEN, ...STUDENTS];

export interface Person {
  readonly code: string;
  readonly name: string;
  readonly size: Size;
  readonly minor: boolean;
}

const persons = (names: readonly string[], groups: readonly Size[], minor: boolean): Person[] =>
  names.map((name, index) => ({ code: name.toLowerCase().replace(/[^a-z]+/g, "-"), name, size: groups[index % groups.length]!, minor }));

/** The dancers, in the order of the name lists; every third is of the same size. */
export const POOLS = {
  women: persons(NAMES.women, WOMEN, false),
  men: persons(NAMES.men, MEN, false),
  students: persons(NAMES.students, STUDENTS, true),
} as const;
export type Pool = keyof typeof POOLS;
export const EVERYBODY: readonly Person[] = Object.values(POOLS).flat();

export const sizeRows = (): (readonly string[])[] => [["code", "name"], ...SIZES.map(({ code, name }) => [code, name])];

export const performerRows = (): (readonly string[])[] => [
  ["code", "name", "size_group", "minor"],
  ...EVERYBODY.map(({ code, name, size, minor }) => [code, name, size.code, minor ? "yes" : "no"]),
];
