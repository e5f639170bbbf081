import { describe, expect, it } from "vitest";
import { FormulaReader } from "#lib/breakdown/formulaReader";
import type { Parameter } from "#lib/constructions/construction";
import { library } from "../../seed/constructions/library";
import { surveyBodies } from "./bodies";
import { madeFor } from "./takings";

const women = surveyBodies().filter(({ sex }) => sex === "F");
const men = surveyBodies().filter(({ sex }) => sex === "M");
/** Shortest and tallest of each sex. */
const bodies = [women[0]!, women.at(-1)!, men[0]!, men.at(-1)!];

const ends = (parameter: Parameter): readonly string[] => {
  switch (parameter.kind) {
    case "choice":
      return parameter.options.map(({ code }) => code);
    case "yes-no":
      return ["yes", "no"];
    default:
      return [String(parameter.min), String(parameter.max)];
  }
};

const cases = library.flatMap((construction) =>
  construction.parameters.map((parameter) => ({ construction, parameter, name: construction.code })),
);

describe("each parameter at each end of its limits, on the shortest and tallest bodies of a published survey", () => {
  const formulas = new FormulaReader();
  it.each(cases)("$name, $parameter.code: nothing is negative, nothing cannot be worked out", ({ construction, parameter }) => {
    for (const { values } of bodies)
      for (const end of ends(parameter)) {
        const work = madeFor(construction, values, {}, formulas, { [parameter.code]: end });
        expect(work.notes.filter(({ kind }) => kind === "parameter").map(({ text }) => text)).toEqual([]);
        for (const { quantity } of work.needs) expect(quantity).toBeGreaterThan(0);
      }
  });
});
