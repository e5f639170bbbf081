import { readFileSync } from "node:fs";
import { MEASUREMENTS, type Measurement, type MeasurementValues } from "#lib/measurements/measurement";
import { LENGTH_PER_MM } from "#lib/units/quantities";
import survey from "./ansur.json";

export interface SurveyBody {
  readonly sex: "F" | "M";
  readonly values: MeasurementValues;
}

/** Bodies of the survey, women first, each sex by height; with `every` 20 each twentieth of them. */
export const surveyBodies = (every = 1): readonly SurveyBody[] => {
  const [heading = "", ...rows] = readFileSync("tests/published/body/ansur.csv", "utf8").trim().split("\n");
  const columns = heading.split(",");
  return rows.filter((_, at) => at % every === 0).map((row) => surveyBody(columns, row.split(",")));
};

const surveyBody = (columns: readonly string[], cells: readonly string[]): SurveyBody => {
  const sex = cells[0] === "F" ? "F" : "M";
  const taken: Readonly<Partial<Record<Measurement, string>>> = survey.taken;
  const values: Partial<Record<Measurement, number>> = {};
  for (const name of MEASUREMENTS) {
    const column = taken[name];
    if (column !== undefined) values[name] = Number(cells[columns.indexOf(column)]) * LENGTH_PER_MM;
  }
  for (const [name, [from, part, whole]] of Object.entries(survey.derived[sex]))
    values[name as Measurement] = Math.round((values[from as Measurement]! * Number(part)) / Number(whole));
  return { sex, values };
};
