import { isoDate } from "#lib/calendar/days";
import type { PlainDate } from "#lib/calendar/plainDate";
import { meant } from "#lib/exchange/nearest";
import { SKILLS } from "#lib/labour/skills";
import { MATERIAL_KINDS } from "#lib/materials/material";
import { failed, ok, type Result } from "#lib/result";
import type { Staging } from "#lib/staging/staging";

export type OptionKind = "skill" | "milestone" | "role" | "performer" | "piece" | "material kind" | "day" | "whole" | "text";

/** Something a question may be told; none must be. */
export interface Option {
  readonly name: string;
  readonly kind: OptionKind;
  readonly meaning: string;
}

/** Options as given, each already found to be of its kind. */
export class Options {
  constructor(private readonly given: ReadonlyMap<string, string>) {}

  text(name: string): string | null {
    return this.given.get(name) ?? null;
  }

  whole(name: string): number | null {
    const text = this.given.get(name);
    return text === undefined ? null : Number(text);
  }

  day(name: string): PlainDate | null {
    return (this.given.get(name) as PlainDate | undefined) ?? null;
  }
}

/** Judges the options given to a question; what is wrong with them comes back as one sentence. */
export const readOptions = (known: readonly Option[], given: ReadonlyMap<string, string>, staging: Staging): Result<Options, string> => {
  for (const [name, value] of given) {
    const option = known.find((one) => one.name === name);
    if (!option) {
      const names = known.map((one) => one.name);
      const otherwise = names.length === 0 ? "It takes none." : `It takes ${names.map((one) => `--${one}`).join(", ")}.`;
      return failed(`This question has no option --${name}. ${meant(name, names, otherwise)}`);
    }
    const wrong = wrongWith(option, value, staging);
    if (wrong !== null) return failed(`--${name}: ${wrong}`);
  }
  return ok(new Options(given));
};

const wrongWith = ({ kind }: Option, value: string, staging: Staging): string | null => {
  switch (kind) {
    case "text":
      return null;
    case "whole":
      return /^\d{1,6}$/.test(value) ? null : `"${value}" is not a whole number.`;
    case "day":
      return isoDate(value) === null ? `"${value}" is not a day like 2027-01-11.` : null;
    default: {
      const codes = codesOf(kind, staging);
      return codes.includes(value) ? null : `There is no ${kind} "${value}". ${meant(value, codes, `There are: ${codes.join(", ")}.`)}`;
    }
  }
};

const codesOf = (kind: Exclude<OptionKind, "text" | "whole" | "day">, staging: Staging): readonly string[] => {
  switch (kind) {
    case "skill":
      return SKILLS;
    case "material kind":
      return MATERIAL_KINDS;
    case "milestone":
      return staging.milestones.map(({ code }) => code);
    case "role":
      return staging.roles.map(({ code }) => code);
    case "performer":
      return staging.performers.map(({ code }) => code);
    case "piece":
      return staging.pieces.map(({ code }) => code);
  }
};
