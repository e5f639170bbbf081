import type { Measurement } from "#lib/measurements/measurement";
import type { Point } from "./sectionNet";

/** Where a measurement is taken, on a figure that faces us or turns its back: from its middle, and from the crown of the head down. */
export interface FigureMark {
  readonly measurement: Measurement;
  readonly view: "front" | "back";
  /** On which side its disc stands. */
  readonly side: "left" | "right";
  /** The way of the tape. Two points at one height go round the body. */
  readonly way: readonly Point[];
}

const at = (x: number, y: number): Point => ({ x, y });
const round = (y: number, half: number): readonly Point[] => [at(-half, y), at(half, y)];
const mark = (view: FigureMark["view"], measurement: Measurement, side: FigureMark["side"], way: readonly Point[]): FigureMark => ({
  measurement,
  view,
  side,
  way,
});

/** Common practice, no source; where the measurements are described in words, the words hold. */
export const FIGURE_MARKS: readonly FigureMark[] = [
  mark("front", "height", "left", [at(-112, 0), at(-112, 382), at(-112, 580)]),
  mark("front", "bust", "right", round(174, 50)),
  mark("front", "highBust", "right", round(148, 50)),
  mark("front", "underbust", "left", round(196, 46)),
  mark("front", "waist", "right", round(232, 38)),
  mark("front", "highHip", "left", round(262, 46)),
  mark("front", "hip", "right", round(296, 55)),
  mark("front", "girth", "right", [at(24, 96), at(16, 170), at(8, 250), at(2, 318)]),
  mark("front", "neck", "right", round(80, 13)),
  mark("front", "insideLeg", "left", [at(-4, 322), at(-10, 430), at(-12, 576)]),
  mark("front", "thigh", "right", [at(4, 338), at(54, 338)]),
  mark("front", "calf", "right", [at(9, 464), at(38, 464)]),
  mark("front", "head", "left", round(26, 27)),
  mark("front", "shoe", "right", [at(8, 586), at(38, 586)]),
  mark("front", "basqueLine", "left", [at(-22, 232), at(-24, 262)]),
  mark("front", "nippleToNipple", "left", [at(-20, 168), at(20, 168)]),
  mark("front", "frontShoulderToWaist", "left", [at(-30, 98), at(-21, 168), at(-20, 232)]),
  mark("front", "hemFromFloor", "left", [at(-60, 470), at(-60, 580)]),
  mark("back", "napeToWaist", "left", [at(0, 88), at(0, 232)]),
  mark("back", "shoulder", "right", [at(14, 90), at(60, 104)]),
  mark("back", "backWidth", "left", round(140, 46)),
  mark("back", "armscye", "right", [at(60, 104), at(45, 126), at(50, 152)]),
  mark("back", "armToElbow", "right", [at(66, 108), at(80, 160), at(84, 204)]),
  mark("back", "armToWrist", "left", [at(-66, 108), at(-82, 200), at(-96, 280)]),
  mark("back", "waistToKnee", "left", [at(-38, 232), at(-54, 300), at(-40, 428)]),
  mark("back", "waistToFloor", "right", [at(40, 232), at(58, 300), at(50, 430), at(48, 578)]),
  mark("back", "rise", "right", [at(14, 232), at(16, 316)]),
];
