import type { Scope } from "#lib/constructions/checkUnits";
import type { Value } from "#lib/constructions/evaluate";
import type { Expression } from "#lib/constructions/expression";
import { driverScope } from "#lib/constructions/scope";
import { MEASUREMENTS } from "#lib/measurements/measurement";
import { readLength } from "#lib/units/readLength";
import { showLength } from "#lib/units/showLength";
import { type FormulaReader, namesIn } from "./formulaReader";
import { givenParameters } from "./givenParameters";
import { layerSums, layerTable, numberOf } from "./layerTable";
import type { Reader } from "./reader";
import type { MakingRequest } from "./request";
import { sayValue } from "./say";
import type { ComputedLayer, DriverValue, WorkNote } from "./work";

/** All that was worked out for a garment before its operations and needs. */
export interface Figures {
  /** Parameters, body, sums and drivers, by the names formulas use. */
  readonly values: ReadonlyMap<string, Value>;
  /** Units of those names. */
  readonly units: Scope;
  readonly layers: readonly ComputedLayer[];
  readonly drivers: readonly DriverValue[];
  readonly notes: readonly WorkNote[];
}

export const workFigures = (request: MakingRequest, formulas: FormulaReader): Figures => {
  const { construction, garment } = request;
  // What is there already needs no cloth and no pattern: only a slip in the parameters is worth telling then.
  const texts = new Map<string, WorkNote>();
  const note = (kind: WorkNote["kind"], text: string) => {
    if (kind === "parameter" || request.source === "build") texts.set(text, { garment, kind, text });
  };
  const given = givenParameters(construction, request.parameters);
  for (const problem of given.problems) note("parameter", problem);
  const values = new Map<string, Value>([["pi", Math.PI], ...given.values, ...bodyValues(request, note)]);
  const layers = layerTable(request, formulas, values, note);
  for (const [name, sum] of Object.entries(layerSums(layers))) values.set(name, sum);
  const units = driverScope(construction);
  const drivers = construction.drivers.map((driver): DriverValue => {
    const worked = numberOf(formulas.work(driver.formula, values), (text) =>
      note("parameter", `${driver.label[request.reader.words]}: ${text}`),
    );
    const value = driver.unit === "length" ? Math.round(worked) : worked;
    const tree = formulas.tree(driver.formula);
    const arithmetic = tree.ok ? sayFormula(driver.formula, tree.value, values, units, request.reader) : "";
    values.set(driver.code, value);
    return { code: driver.code, label: driver.label, unit: driver.unit, value, arithmetic };
  });
  return { values, units, layers, drivers, notes: [...texts.values()] };
};

/** Every measurement that formulas name has a median: the construction was refused otherwise. */
const bodyValues = (request: MakingRequest, note: (kind: WorkNote["kind"], text: string) => void): readonly (readonly [string, number])[] =>
  MEASUREMENTS.flatMap((measurement) => {
    const known = request.body[measurement];
    if (known !== undefined) return [[`body.${measurement}`, known] as const];
    const text = request.construction.medianBody[measurement];
    const median = text === undefined ? null : readLength(text);
    if (!median?.ok) return [];
    const shown = showLength(median.value, request.reader.lengths);
    note("measurement", `${measurement} is not known: ${shown} is taken, the median of the construction. Measure before cutting.`);
    return [[`body.${measurement}`, median.value] as const];
  });

/** `hoopRing + hoopOverlap, with hoopRing 85 1/4 in, hoopOverlap 7 7/8 in`. */
export const sayFormula = (text: string, tree: Expression, values: ReadonlyMap<string, Value>, units: Scope, reader: Reader): string => {
  const used = namesIn(tree).filter((name) => name !== "pi");
  const figures = used.map((name) => `${name} ${sayValue(values.get(name) ?? 0, units.get(name)?.unit ?? "ratio", reader)}`);
  return figures.length === 0 ? text : `${text}, with ${figures.join(", ")}`;
};
