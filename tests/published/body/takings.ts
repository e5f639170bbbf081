import { breakDownOne } from "#lib/breakdown/breakDownOne";
import type { FormulaReader } from "#lib/breakdown/formulaReader";
import { sourceOf } from "#lib/breakdown/medianWork";
import type { GarmentWork } from "#lib/breakdown/work";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Construction } from "#lib/constructions/construction";
import type { Material } from "#lib/materials/material";
import { bodyOf } from "#lib/measurements/body";
import type { MeasurementSheet, MeasurementValues } from "#lib/measurements/measurement";
import { LENGTH_PER_INCH, LENGTH_PER_MM, type Length } from "#lib/units/quantities";

/** Likely hours, and metres by kind of material, of one garment. */
export type Taking = Readonly<Record<string, number>>;

/** The widths a layer or a row of panels depends on: stiff net of 54 in, soft net of 60 in less its selvedges. */
const net = (code: string, width: Length): Material => ({
  code,
  name: code,
  kind: "net",
  measure: "length",
  colour: "white",
  width,
  cuttable: width,
  shrinkage: 0,
  spare: 0,
  kerf: 0,
  keep: null,
  grain: "fixed",
});
const MATERIALS = new Map([net("net-stiff", 54 * LENGTH_PER_INCH), net("net-soft", 58 * LENGTH_PER_INCH)].map((each) => [each.code, each]));
const METRE = 1000 * LENGTH_PER_MM;

const sheet = (of: MeasurementSheet["of"], values: MeasurementValues): MeasurementSheet => ({
  of,
  taken: "2012-01-01" as PlainDate,
  body: "not noted",
  values,
});

/** One garment for a body of the survey, who wears a size group's figures where there are none of the body's own. */
export const madeFor = (
  construction: Construction,
  own: MeasurementValues | null,
  group: MeasurementValues,
  formulas: FormulaReader,
  parameters: Readonly<Record<string, string>> = {},
): GarmentWork => {
  const measurements = [sheet({ sizeGroup: "group" }, group), ...(own ? [sheet({ performer: "own" }, own)] : [])];
  const body = bodyOf({ measurements }, { performer: own ? "own" : null, sizeGroup: "group" });
  return breakDownOne(
    {
      garment: "B 1",
      construction,
      source: sourceOf(construction),
      parameters,
      body: body.values,
      chosen: {},
      materials: MATERIALS,
      ordinal: 1,
      oneLotSet: null,
      wearers: 1,
      reader: { words: "uk", lengths: "cm" },
    },
    formulas,
  );
};

export const takingOf = (work: GarmentWork, construction: Construction): Taking => {
  const taking: Record<string, number> = { hours: work.operations.reduce((sum, { minutes }) => sum + minutes[1], 0) / 60 };
  const kinds = new Map(construction.needs.map(({ role, kind }) => [role, kind]));
  for (const { role, measure, quantity } of work.needs) {
    const kind = kinds.get(role)!;
    if (measure === "length") taking[kind] = (taking[kind] ?? 0) + quantity / METRE;
  }
  return taking;
};
