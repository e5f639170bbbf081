import type { ConstructionFitting, Wait } from "#lib/constructions/construction";
import type { WorkFitting } from "./work";

/** A cover is fitted in a quarter of an hour: fittings for ballet are counted in fifteen-minute units in published agreements. */
const COVER_MINUTES = 15;
const COVER_NAME = { uk: "Cover fitting", us: "Understudy fitting" };

/**
 * All fittings of a garment: the construction's own for the first wearer; for each later one a single cover fitting once the first has had
 * the final, or (when there is none) once everything that nothing waits for is done.
 */
export const workFittings = (
  own: readonly ConstructionFitting[],
  waits: ReadonlyMap<string, readonly Wait[]>,
  wearers: number,
): readonly WorkFitting[] => {
  if (wearers === 0) return [];
  const first = own.map(
    ({ code, kind, name, minutes }): WorkFitting => ({ code, kind, name, minutes, wearer: 0, waitsFor: waits.get(code) ?? [] }),
  );
  const finals = first.filter(({ kind }) => kind === "final").map(({ code }) => code);
  const waited = new Set([...waits.values()].flat().map(({ on }) => on));
  const after = finals.length > 0 ? finals : [...waits.keys()].filter((code) => !waited.has(code));
  const covers = Array.from({ length: wearers - 1 }, (_, index): WorkFitting => {
    const wearer = index + 1;
    const waitsFor = after.map((on): Wait => ({ on, lagMinutes: 0, lagKind: "elapsed" }));
    return { code: `fit-cover-${wearer + 1}`, kind: "cover", name: COVER_NAME, minutes: COVER_MINUTES, wearer, waitsFor };
  });
  return [...first, ...covers];
};
