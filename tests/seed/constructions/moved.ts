import { medianWork, sourceOf } from "#lib/breakdown/medianWork";
import type { Construction } from "#lib/constructions/construction";

export interface Moved {
  /** Operations whose likely minutes change, or that come or go. */
  readonly minutes: readonly string[];
  /** Needs whose quantity changes, or that come or go. */
  readonly cloth: readonly string[];
}

const changed = (before: ReadonlyMap<string, number>, after: ReadonlyMap<string, number>): readonly string[] =>
  [...new Set([...before.keys(), ...after.keys()])].filter((code) => before.get(code) !== after.get(code)).sort();

/** What moves when one parameter of a construction is given another value, for the median body. */
export const moved = (construction: Construction, parameter: string, value: string): Moved => {
  const source = sourceOf(construction);
  const [before, after] = [medianWork(construction, {}, source), medianWork(construction, { [parameter]: value }, source)];
  if (after.notes.some(({ kind }) => kind === "parameter")) throw new Error(`${construction.code} does not take ${parameter} ${value}`);
  const minutes = (work: typeof before) => new Map(work.operations.map(({ code, minutes }) => [code, minutes[1]]));
  const cloth = (work: typeof before) => new Map(work.needs.map(({ role, quantity }) => [role, quantity]));
  return { minutes: changed(minutes(before), minutes(after)), cloth: changed(cloth(before), cloth(after)) };
};
