import type { GarmentWork } from "#lib/breakdown/work";
import type { Skill } from "#lib/labour/skills";
import type { Maker } from "#lib/labour/workroom";
import type { MinorUnits, Minutes } from "#lib/units/quantities";

/**
 * What an hour of standard work in a skill costs: the mean over the makers who have it, each at her pace and productive share, in minor
 * units, not rounded. A fitting takes the time on the clock whoever gives it. Null when nobody has the skill.
 */
export const standardHourCost = (makers: readonly Maker[], skill: Skill): number | null => {
  const costs = makers.flatMap(({ skills, costPerHour, productive }) => {
    const speed = skill === "fit" ? 1_000_000 : (skills[skill] ?? 0) * productive;
    return (skills[skill] ?? 0) > 0 && speed > 0 ? [(costPerHour * 1_000_000) / speed] : [];
  });
  return costs.length === 0 ? null : costs.reduce((sum, cost) => sum + cost, 0) / costs.length;
};

/** Labour of some garments by that mean, rounded once, and the skills whose minutes nobody can be asked for. */
export const standardLabour = (
  makers: readonly Maker[],
  works: readonly GarmentWork[],
): { readonly cost: MinorUnits; readonly nobody: readonly Skill[] } => {
  const minutes = new Map<Skill, Minutes>();
  const add = (skill: Skill, more: Minutes) => minutes.set(skill, (minutes.get(skill) ?? 0) + more);
  for (const { operations, fittings } of works) {
    for (const operation of operations) add(operation.skill, operation.minutes[1]);
    for (const fitting of fittings) add("fit", fitting.minutes);
  }
  const costs = [...minutes].map(([skill, needed]) => ({ skill, needed, hour: standardHourCost(makers, skill) }));
  return {
    cost: Math.round(costs.reduce((sum, { needed, hour }) => sum + (needed * (hour ?? 0)) / 60, 0)),
    nobody: costs.filter(({ hour }) => hour === null).map(({ skill }) => skill),
  };
};
