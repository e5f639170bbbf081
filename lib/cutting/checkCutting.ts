import type { Need } from "#lib/breakdown/work";
import type { Length } from "#lib/units/quantities";
import { checkPattern } from "./checkPattern";
import type { CuttingPlan } from "./cuttingPlan";

/**
 * Judges a cutting plan from its needs alone, sharing no code with what makes plans: every piece is cut once and turned only where the grain
 * is free, none lies over another or off the stock, cuts have their kerf, and the figures follow from the places. Returns what is wrong, in words.
 */
export const checkCutting = (plan: CuttingPlan, needs: readonly Need[], cuttable: Length | null, turned = false): readonly string[] => {
  const faults = [...missing(plan, needs, cuttable, turned), ...plan.patterns.flatMap((pattern) => checkPattern(plan, pattern, cuttable))];
  let stocks = 0;
  let used = 0;
  for (const { times, pieces } of plan.patterns) {
    stocks += times;
    used += times * Math.max(0, ...pieces.map((piece) => piece.y + piece.length));
    if (!turned && pieces.some((piece) => piece.turned)) faults.push("A piece is turned, and the grain is fixed.");
  }
  if (stocks !== plan.count) faults.push(`${stocks} stocks are cut, ${plan.count} are told.`);
  if (used !== plan.used) faults.push(`${used} is used, ${plan.used} is told.`);
  if (plan.stock !== null && plan.waste !== plan.count * plan.stock - used) faults.push(`The waste is not ${plan.waste}.`);
  if (plan.bound > plan.count) faults.push(`The bound ${plan.bound} is above the ${plan.count} used.`);
  if (plan.lengthBound !== null && plan.lengthBound > plan.used)
    faults.push(`The bound ${plan.lengthBound} is above the ${plan.used} used.`);
  const reached = plan.lengthBound === null ? plan.bound === plan.count : plan.lengthBound === plan.used;
  if (plan.proved !== reached)
    faults.push(plan.proved ? "It is told as proved, and its bound is not reached." : "It is proved, and not told so.");
  return faults;
};

/** Listed pieces must be there as often as listed; a need without a list, by its length. */
const missing = (plan: CuttingPlan, needs: readonly Need[], cuttable: Length | null, turned: boolean): readonly string[] => {
  const left = new Map<string, number>();
  const add = (name: string, by: number) => left.set(name, (left.get(name) ?? 0) + by);
  const byLength = new Set<string>();
  for (const need of needs) {
    if (need.cuts.length === 0) {
      byLength.add(`${need.garment}, ${need.label.uk}`);
      add(`${need.garment}, ${need.label.uk}`, need.quantity);
    }
    for (const { label, length, breadth, count } of need.cuts) {
      const tooBroad = cuttable !== null && breadth !== null && breadth > cuttable && !(turned && length <= cuttable);
      const own = tooBroad ? { breadth: null, count: count * Math.ceil(breadth / cuttable) } : { breadth, count };
      add(`${need.garment}, ${label}, ${sizeOf(length, own.breadth)}`, own.count);
    }
  }
  for (const pattern of plan.patterns)
    for (const { garment, label, length, breadth, turned: lies } of pattern.pieces) {
      const name = `${garment}, ${label}`;
      if (byLength.has(name)) add(name, -length * pattern.times);
      else if (lies && length === cuttable) add(`${name}, ${sizeOf(breadth!, null)}`, -pattern.times);
      else add(`${name}, ${sizeOf(length, breadth)}`, -pattern.times);
    }
  return [...left].filter(([, count]) => count !== 0).map(([name, count]) => `${name}: ${count} too few.`);
};

/** The sides of a piece, whichever way it lies: whether it may be turned is asked of the piece. */
const sizeOf = (length: Length, breadth: Length | null): string =>
  breadth === null ? String(length) : `${Math.max(length, breadth)} x ${Math.min(length, breadth)}`;
