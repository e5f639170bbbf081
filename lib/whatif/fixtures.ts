import type { PlainDate } from "#lib/calendar/plainDate";
import type { CastPlace } from "#lib/casting/casting";
import { level } from "#lib/levelling/level";
import type { PlanOptions } from "#lib/planning/planStaging";
import type { Staging } from "#lib/staging/staging";

/** For the tests of this room: the plain rule from the small staging's first day, and a staging before and after casting. */

export const PLAINLY: PlanOptions = {
  today: "2027-01-11" as PlainDate,
  level: (problem) => level(problem, { seed: 1, rounds: 0, stop: () => false }),
};

/** Nobody is cast: every place stands on its size group, and nobody covers. */
export const designsAlone = (staging: Staging): Staging => ({
  ...staging,
  performers: [],
  measurements: staging.measurements.filter(({ of }) => "sizeGroup" in of),
  casting: staging.casting.filter(({ standing }) => standing === "cast").map((place) => ({ ...place, performer: null })),
  calls: staging.calls.filter(({ performer }) => performer === null),
});

/** Every place for which `isCast` gets a performer of its own, with the body of its size group, free all day like the others. */
export const castToGroups = (designs: Staging, isCast: (place: CastPlace, index: number) => boolean): Staging => {
  const casting = designs.casting.map((place, index) => (isCast(place, index) ? { ...place, performer: `dancer ${index}` } : place));
  const named = casting.flatMap(({ performer, sizeGroup }) => (performer === null ? [] : [{ performer, sizeGroup }]));
  return {
    ...designs,
    casting,
    performers: named.map(({ performer, sizeGroup }) => ({ code: performer, name: performer, sizeGroup, minor: false })),
    measurements: [
      ...designs.measurements,
      ...named.flatMap(({ performer, sizeGroup }) =>
        designs.measurements
          .filter(({ of }) => "sizeGroup" in of && of.sizeGroup === sizeGroup)
          .map((sheet) => ({ ...sheet, of: { performer } })),
      ),
    ],
  };
};
