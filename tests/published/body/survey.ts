import { FormulaReader } from "#lib/breakdown/formulaReader";
import type { Construction } from "#lib/constructions/construction";
import { absurd } from "./absurd";
import type { SurveyBody } from "./bodies";
import { type SizeGroup, sizeGroups } from "./sizeGroups";
import { madeFor, type Taking, takingOf } from "./takings";

/** One construction made for every body and every size group of a survey. */
export interface Surveyed {
  readonly construction: string;
  readonly bodies: readonly Taking[];
  /** The same garments reckoned on the size groups alone, in the same order, as before casting. */
  readonly groups: readonly Taking[];
  readonly absurd: readonly string[];
}

export const surveyed = (library: readonly Construction[], bodies: readonly SurveyBody[]): readonly Surveyed[] => {
  const formulas = new FormulaReader();
  const groups = sizeGroups(bodies);
  return library.map((construction) => {
    const found = new Set<string>();
    const make = (own: SurveyBody | null, group: SizeGroup): Taking => {
      const work = madeFor(construction, own?.values ?? null, group.values, formulas);
      const taking = takingOf(work, construction);
      for (const text of absurd(construction.code, work, taking)) found.add(`${construction.code}: ${text}`);
      return taking;
    };
    const made = groups.map((group) => ({ unnamed: make(null, group), own: group.members.map((body) => make(body, group)) }));
    return {
      construction: construction.code,
      bodies: made.flatMap(({ own }) => own),
      groups: made.flatMap(({ unnamed, own }) => own.map(() => unnamed)),
      absurd: [...found].sort(),
    };
  });
};
