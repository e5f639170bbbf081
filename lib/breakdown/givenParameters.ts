import type { Construction, Parameter } from "#lib/constructions/construction";
import type { Value } from "#lib/constructions/evaluate";
import { failed, ok, type Result } from "#lib/result";
import { readLength } from "#lib/units/readLength";

/** Values of all parameters, and what was wrong with those given. */
export interface GivenParameters {
  readonly values: ReadonlyMap<string, Value>;
  readonly problems: readonly string[];
}

/** Reads what a piece says about its parameters. What is unknown, unreadable or outside the limits is told, and the construction's own value stands. */
export const givenParameters = (construction: Construction, given: Readonly<Record<string, string>>): GivenParameters => {
  const values = new Map<string, Value>();
  const problems: string[] = [];
  const known = construction.parameters.map(({ code }) => code);
  for (const code of Object.keys(given).sort())
    if (!known.includes(code)) problems.push(`"${code}" is no parameter of ${construction.code}; there are ${known.join(", ") || "none"}.`);
  for (const parameter of construction.parameters) {
    const text = given[parameter.code]?.trim() ?? "";
    const read = text === "" ? ok(standing(parameter)) : readGiven(parameter, text);
    if (!read.ok) problems.push(`${parameter.code}: ${read.error} Worked with ${parameter.value}.`);
    values.set(parameter.code, read.ok ? read.value : standing(parameter));
  }
  return { values, problems };
};

/** The construction's own value. Its lengths were read when it was checked. */
const standing = (parameter: Parameter): Value => (parameter.kind === "length" ? lengthOf(parameter.value) : parameter.value);

const lengthOf = (text: string): number => {
  const length = readLength(text);
  return length.ok ? length.value : 0;
};

/** One value as a person gave it, judged by the parameter's kind and limits. */
export const readGiven = (parameter: Parameter, text: string): Result<Value, string> => {
  switch (parameter.kind) {
    case "choice": {
      const option = parameter.options.find(({ code }) => code.toLowerCase() === text.toLowerCase());
      return option ? ok(option.code) : failed(`"${text}" is none of ${parameter.options.map(({ code }) => code).join(", ")}.`);
    }
    case "yes-no": {
      const word = text.toLowerCase();
      if (["yes", "y", "true"].includes(word)) return ok(true);
      return ["no", "n", "false"].includes(word) ? ok(false) : failed(`"${text}" is neither yes nor no.`);
    }
    case "length": {
      const length = readLength(text);
      if (!length.ok) return failed(`${length.error.problem} ${length.error.mend}`);
      const within = lengthOf(parameter.min) <= length.value && length.value <= lengthOf(parameter.max);
      return within ? length : failed(`${text} is outside ${parameter.min} to ${parameter.max}.`);
    }
    default: {
      if (!/^\d+(\.\d+)?$/.test(text)) return failed(`"${text}" is not a number.`);
      const value = Number(text);
      if (parameter.kind === "count" && !Number.isInteger(value)) return failed(`${text} is not a whole number.`);
      const within = parameter.min <= value && value <= parameter.max;
      return within ? ok(value) : failed(`${text} is outside ${parameter.min} to ${parameter.max}.`);
    }
  }
};
