import { MEASUREMENTS, type Measurement } from "#lib/measurements/measurement";
import type { Scope } from "./checkUnits";
import type { Construction, NeedRule } from "./construction";
import type { Unit } from "./expression";
import { baseScope, driverScope, layerScope } from "./scope";

/** One formula of a construction: where it stands, what it may name, what it must come to. */
export interface PlacedFormula {
  readonly where: string;
  readonly text: string;
  readonly scope: Scope;
  readonly unit: Unit;
  /** All a word may say; null for anything else. */
  readonly words: readonly string[] | null;
}

/** Every formula of a construction that is not empty, in the order of the file. */
export const formulasOf = (construction: Construction): readonly PlacedFormula[] => {
  const after = driverScope(construction);
  const placed = (
    where: string,
    text: string,
    scope: Scope,
    unit: Unit,
    words: readonly string[] | null = null,
  ): readonly PlacedFormula[] => (text === "" ? [] : [{ where, text, scope, unit, words }]);
  const inLayer = layerScope(construction);
  return [
    ...construction.layers.flatMap((row, index) => {
      const where = `layers[${index + 1}]`;
      return [
        placed(`${where}.count`, row.count, baseScope(construction), "count"),
        placed(`${where}.depth`, row.depth, inLayer, "length"),
        placed(`${where}.fullness`, row.fullness, inLayer, "ratio"),
        placed(`${where}.seam`, row.seam, inLayer, "length"),
        placed(`${where}.drop`, row.drop, inLayer, "length"),
        placed(`${where}.dyed`, row.dyed, inLayer, "word", ["none", "whole", "edge"]),
        placed(`${where}.casing`, row.casing, inLayer, "truth"),
      ].flat();
    }),
    ...construction.drivers.flatMap((driver, index) =>
      placed(`drivers.${driver.code}`, driver.formula, driverScope(construction, index), driver.unit),
    ),
    ...construction.operations.flatMap((operation) => placed(`operations.${operation.code}.when`, operation.when, after, "truth")),
    ...construction.fittings.flatMap((fitting) => placed(`fittings.${fitting.code}.when`, fitting.when, after, "truth")),
    ...construction.needs.flatMap((need) => {
      const where = `needs.${need.role}`;
      return [
        placed(`${where}.formula`, need.formula, after, needUnit(need)),
        placed(`${where}.count`, need.count, after, "count"),
        placed(`${where}.breadth`, need.breadth, after, "length"),
        placed(`${where}.when`, need.when, after, "truth"),
      ].flat();
    }),
  ];
};

const needUnit = (need: NeedRule): Unit => (need.cut === "plain" && need.measure === "count" ? "count" : "length");

/** The body measurements that any formula of a construction names. */
export const measurementsUsed = (construction: Construction): readonly Measurement[] => {
  const texts = formulasOf(construction).map(({ text }) => text);
  return MEASUREMENTS.filter((measurement) => texts.some((text) => new RegExp(`\\bbody\\.${measurement}\\b`).test(text)));
};
