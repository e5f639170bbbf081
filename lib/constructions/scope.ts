import { MEASUREMENTS } from "#lib/measurements/measurement";
import type { Scope, UnitOf } from "./checkUnits";
import type { Construction, Parameter } from "./construction";
import type { Unit } from "./expression";

/** Sums over the computed layer table, by the name a formula uses. */
const LAYER_SUMS = {
  "net.layers": "count",
  "net.widths": "count",
  "net.strip": "length",
  "net.roll": "length",
  "net.line": "length",
  "net.top": "length",
  "net.casings": "count",
  /** Depth of the deepest layer that carries a casing. */
  "net.casing": "length",
  "net.dyed": "length",
} as const satisfies Readonly<Record<string, Unit>>;
export type LayerSum = keyof typeof LAYER_SUMS;

/** Names that a parameter or driver may not take. */
export const RESERVED = ["and", "or", "not", "pi", "layer", "body", "net", "min", "max", "ceil", "floor", "round", "if"] as const;

const plain = (unit: Unit): UnitOf => ({ unit, words: [] });

const parameterUnit = (parameter: Parameter): UnitOf => {
  switch (parameter.kind) {
    case "choice":
      return { unit: "word", words: parameter.options.map((option) => option.code) };
    case "yes-no":
      return plain("truth");
    default:
      return plain(parameter.kind);
  }
};

/** What every formula of a construction may name: parameters, `body.` measurements and pi. */
export const baseScope = (construction: Construction): Map<string, UnitOf> =>
  new Map<string, UnitOf>([
    ["pi", plain("ratio")],
    ...MEASUREMENTS.map((measurement) => [`body.${measurement}`, plain("length")] as const),
    ...construction.parameters.map((parameter) => [parameter.code, parameterUnit(parameter)] as const),
  ]);

/** The scope of the cells of the layer table: the layer's own number as well. */
export const layerScope = (construction: Construction): Scope => baseScope(construction).set("layer", plain("count"));

/** The scope of driver number `before`, and with none given of everything after the drivers: sums of the table and the drivers above. */
export const driverScope = (construction: Construction, before = construction.drivers.length): Scope => {
  const scope = baseScope(construction);
  for (const [sum, unit] of Object.entries(LAYER_SUMS)) scope.set(sum, plain(unit));
  for (const driver of construction.drivers.slice(0, before)) scope.set(driver.code, plain(driver.unit));
  return scope;
};
