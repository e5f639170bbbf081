import { readLength } from "#lib/units/readLength";
import { checkUnits, UNIT_WORDS } from "./checkUnits";
import type { Construction, NeedRule, Parameter } from "./construction";
import { formulasOf, measurementsUsed, type PlacedFormula } from "./formulas";
import { parseExpression } from "./parseExpression";
import { RESERVED } from "./scope";
import { findCycle } from "./waitGraph";

/** One thing wrong with a construction, and the part of it that is meant. */
export interface ConstructionFault {
  readonly where: string;
  readonly problem: string;
  readonly mend: string;
}

/** Everything wrong with a construction whose shape is right; empty when it may be used. */
export const checkConstruction = (construction: Construction): readonly ConstructionFault[] => [
  ...repeated("parameters and drivers", [...construction.parameters, ...construction.drivers]),
  ...repeated("operations and fittings", [...construction.operations, ...construction.fittings]),
  ...repeated(
    "needs",
    construction.needs.map((need) => ({ code: need.role })),
  ),
  ...reserved(construction),
  ...construction.parameters.flatMap(limits),
  ...references(construction),
  ...medianBody(construction),
  ...formulasOf(construction).flatMap(formulaFaults),
  ...construction.needs.flatMap(needFaults),
  ...cycleFaults(construction),
];

const repeated = (where: string, things: readonly { readonly code: string }[]): readonly ConstructionFault[] => {
  const seen = new Set<string>();
  return things.flatMap(({ code }) => {
    if (!seen.has(code)) {
      seen.add(code);
      return [];
    }
    return [{ where, problem: `"${code}" is there twice.`, mend: "Give each its own code." }];
  });
};

const reserved = (construction: Construction): readonly ConstructionFault[] =>
  [...construction.parameters, ...construction.drivers]
    .filter(({ code }) => (RESERVED as readonly string[]).includes(code))
    .map(({ code }) => ({ where: code, problem: `"${code}" has a meaning of its own in formulas.`, mend: "Choose another name." }));

const limits = (parameter: Parameter): readonly ConstructionFault[] => {
  const where = `parameters.${parameter.code}`;
  switch (parameter.kind) {
    case "yes-no":
      return [];
    case "choice":
      return parameter.options.some((option) => option.code === parameter.value)
        ? []
        : [
            {
              where,
              problem: `"${parameter.value}" is none of its options.`,
              mend: `Write ${parameter.options.map((o) => o.code).join(" or ")}.`,
            },
          ];
    case "length": {
      const read = [parameter.min, parameter.value, parameter.max].map((text) => readLength(text));
      const wrong = read.flatMap((length) => (length.ok ? [] : [{ where, ...length.error }]));
      const [min, value, max] = read.map((length) => (length.ok ? length.value : 0));
      return wrong.length > 0 ? wrong : ordered(where, min!, value!, max!);
    }
    default:
      return ordered(where, parameter.min, parameter.value, parameter.max);
  }
};

const ordered = (where: string, min: number, value: number, max: number): readonly ConstructionFault[] =>
  min <= value && value <= max
    ? []
    : [{ where, problem: "The value is outside its limits.", mend: "Write min, value and max so that they rise." }];

const references = (construction: Construction): readonly ConstructionFault[] => {
  const operations = new Set(construction.operations.map(({ code }) => code));
  const nodes = new Set([...operations, ...construction.fittings.map(({ code }) => code)]);
  const drivers = new Set(construction.drivers.map(({ code }) => code));
  const nets = new Set(construction.needs.filter((need) => need.cut === "net layers").map((need) => need.role));
  const missing = (where: string, known: ReadonlySet<string>, code: string, what: string): readonly ConstructionFault[] =>
    known.has(code) ? [] : [{ where, problem: `There is no ${what} "${code}".`, mend: `Known are ${[...known].join(", ") || "none"}.` }];
  return [
    ...construction.operations.flatMap(({ code, rates, waitsFor }) => [
      ...rates.flatMap(({ driver }) => missing(`operations.${code}.rates`, drivers, driver, "driver")),
      ...waitsFor.flatMap(({ on }) => missing(`operations.${code}.waitsFor`, nodes, on, "operation or fitting")),
    ]),
    ...construction.fittings.flatMap(({ code, waitsFor }) =>
      waitsFor.flatMap(({ on }) => missing(`fittings.${code}.waitsFor`, nodes, on, "operation or fitting")),
    ),
    ...construction.needs.flatMap(({ role, operation }) => missing(`needs.${role}.operation`, operations, operation, "operation")),
    ...construction.layers.flatMap(({ net }, index) => missing(`layers[${index + 1}].net`, nets, net, 'need cut as "net layers"')),
  ];
};

/** A measurement a formula uses must have a value to fall back on. */
const medianBody = (construction: Construction): readonly ConstructionFault[] => {
  const values = Object.entries(construction.medianBody);
  return [
    ...values.flatMap(([measurement, text]) => {
      const length = readLength(text);
      return length.ok ? [] : [{ where: `medianBody.${measurement}`, ...length.error }];
    }),
    ...measurementsUsed(construction)
      .filter((measurement) => construction.medianBody[measurement] === undefined)
      .map((measurement) => ({
        where: `medianBody.${measurement}`,
        problem: `body.${measurement} is used but has no median.`,
        mend: "Write the measurement of the body the figures were set for.",
      })),
  ];
};

const formulaFaults = (formula: PlacedFormula): readonly ConstructionFault[] => {
  const tree = parseExpression(formula.text);
  const checked = tree.ok ? checkUnits(tree.value, formula.scope) : tree;
  const say = (at: number, problem: string, mend: string) => [
    { where: formula.where, problem: `"${formula.text}", at ${at}: ${problem}`, mend },
  ];
  if (!checked.ok) return say(checked.error.at, checked.error.problem, checked.error.mend);
  const { unit, words } = checked.value;
  const fits = unit === formula.unit || (formula.unit === "ratio" && unit === "count");
  if (!fits) return say(1, `It comes to ${UNIT_WORDS[unit]}, not ${UNIT_WORDS[formula.unit]}.`, mendFor(formula.unit, unit));
  const odd = formula.words ? words.filter((word) => !formula.words!.includes(word)) : [];
  return odd.length > 0 ? say(1, `It may say ${odd.join(", ")}.`, `It may only say ${formula.words!.join(", ")}.`) : [];
};

const mendFor = (wanted: string, found: string): string => {
  if (wanted === "count" && found === "ratio") return "Round it with ceil, floor or round.";
  return wanted === "length" ? "Multiply by a length, for example 1 in." : "Divide by a length, for example 1 in, or compare two things.";
};

const needFaults = (need: NeedRule): readonly ConstructionFault[] => {
  const where = `needs.${need.role}`;
  const wants =
    need.cut === "net layers" ? [] : need.cut === "panels" ? (["formula", "count", "breadth"] as const) : (["formula"] as const);
  const empty = wants.filter((field) => need[field] === "");
  const countable = need.measure === "count" && need.cut !== "plain";
  return [
    ...empty.map((field) => ({ where: `${where}.${field}`, problem: `Cut as "${need.cut}" it needs a ${field}.`, mend: "Write one." })),
    ...(countable
      ? [{ where, problem: "Only what is measured by length can be cut.", mend: 'Cut it "plain", or measure it by length.' }]
      : []),
  ];
};

const cycleFaults = (construction: Construction): readonly ConstructionFault[] => {
  const nodes = [...construction.operations, ...construction.fittings];
  const cycle = findCycle(new Map(nodes.map(({ code, waitsFor }) => [code, waitsFor.map(({ on }) => on)])));
  return cycle
    ? [{ where: "waitsFor", problem: `These wait for each other: ${cycle.join(" waits for ")}.`, mend: "Take one of the waits away." }]
    : [];
};
