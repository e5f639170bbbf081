import type { BothWords } from "#lib/constructions/construction";
import type { Measurement } from "#lib/measurements/measurement";
import { both } from "./bothWords";

/** How each measurement is taken, common practice, no source. */
export const MEASUREMENT_LABELS: Readonly<Record<Measurement, BothWords>> = {
  height: both("Height"),
  bust: both("Bust or chest, at the fullest"),
  highBust: both("High bust, under the arms"),
  underbust: both("Underbust"),
  waist: both("Waist, where the body bends"),
  highHip: both("High hip, at the top of the hip bone"),
  hip: both("Hip, at the fullest"),
  girth: both("Girth: shoulder, through the legs, back to the same shoulder"),
  napeToWaist: both("Nape to waist"),
  shoulder: both("Shoulder, neck to arm"),
  backWidth: both("Back width, arm to arm"),
  neck: both("Neck"),
  armscye: both("Armscye, round the armhole"),
  armToElbow: both("Arm, shoulder to elbow"),
  armToWrist: both("Arm, shoulder to wrist"),
  insideLeg: both("Inside leg", "Inseam"),
  waistToKnee: both("Waist to knee"),
  waistToFloor: both("Waist to floor"),
  rise: both("Rise, waist to seat, sitting"),
  thigh: both("Thigh"),
  calf: both("Calf"),
  head: both("Head"),
  shoe: both("Shoe, length of the foot"),
  basqueLine: both("Basque line, waist to high hip"),
  nippleToNipple: both("Nipple to nipple"),
  frontShoulderToWaist: both("Front, shoulder to waist"),
  hemFromFloor: both("Hem from floor, in pointe shoes"),
};
