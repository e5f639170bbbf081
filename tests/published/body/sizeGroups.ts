import { MEASUREMENTS, type Measurement, type MeasurementValues } from "#lib/measurements/measurement";
import { LENGTH_PER_MM, type Length } from "#lib/units/quantities";
import type { SurveyBody } from "./bodies";

export interface SizeGroup {
  readonly code: string;
  readonly members: readonly SurveyBody[];
  /** The median of its members, measurement by measurement. */
  readonly values: MeasurementValues;
}

/** Bust in bands of 8 cm, each with a short and a tall half: common practice, no source. */
const BAND: Length = 80 * LENGTH_PER_MM;
const TALL: Readonly<Record<SurveyBody["sex"], Length>> = { F: 1650 * LENGTH_PER_MM, M: 1780 * LENGTH_PER_MM };

export const sizeGroups = (bodies: readonly SurveyBody[]): readonly SizeGroup[] => {
  const groups = new Map<string, SurveyBody[]>();
  for (const body of bodies) {
    const code = groupOf(body);
    groups.set(code, [...(groups.get(code) ?? []), body]);
  }
  return [...groups].sort(([a], [b]) => (a < b ? -1 : 1)).map(([code, members]) => ({ code, members, values: medians(members) }));
};

export const groupOf = ({ sex, values }: SurveyBody): string => {
  const bust = Math.round(values.bust! / BAND) * 8;
  return `${sex} ${String(bust).padStart(3, "0")} ${values.height! < TALL[sex] ? "short" : "tall"}`;
};

const medians = (members: readonly SurveyBody[]): MeasurementValues => {
  const values: Partial<Record<Measurement, Length>> = {};
  for (const name of MEASUREMENTS) {
    const sorted = members.flatMap(({ values }) => values[name] ?? []).sort((a, b) => a - b);
    if (sorted.length > 0) values[name] = sorted[Math.floor((sorted.length - 1) / 2)]!;
  }
  return values;
};
