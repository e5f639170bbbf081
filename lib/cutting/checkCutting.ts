import type { Need } from "#lib/breakdown/work";
import type { CuttingPlan } from "#lib/purchasing/purchase";
import type { Length } from "#lib/units/quantities";

/**
 * Judges a cutting plan from its needs alone, sharing no code with what makes plans: every piece is cut once, rows are no broader than the
 * cloth, stocks no shorter than what is cut from them, and the figures follow from the pieces. Returns what is wrong, in words.
 */
export const checkCutting = (plan: CuttingPlan, needs: readonly Need[], cuttable: Length | null): readonly string[] => {
  const faults = [...missing(plan, needs, cuttable)];
  let stocks = 0;
  let used = 0;
  for (const pattern of plan.patterns) {
    const depths = new Map<number, number>();
    const across = new Map<number, number>();
    for (const [at, piece] of pattern.pieces.entries()) {
      const row = piece.row ?? -1 - at;
      depths.set(row, Math.max(depths.get(row) ?? 0, piece.length));
      across.set(row, (across.get(row) ?? 0) + (piece.breadth ?? cuttable ?? 0));
    }
    if (cuttable !== null && Math.max(...across.values()) > cuttable) faults.push(`A row is broader than the ${cuttable} of the cloth.`);
    const length = [...depths.values()].reduce((sum, depth) => sum + depth, 0);
    if (plan.stock !== null && (length + pattern.offcut !== plan.stock || pattern.offcut < 0))
      faults.push(`Pieces of ${length} and an offcut of ${pattern.offcut} are not a stock of ${plan.stock}.`);
    stocks += pattern.times;
    used += length * pattern.times;
  }
  if (stocks !== plan.count) faults.push(`${stocks} stocks are cut, ${plan.count} are told.`);
  if (used !== plan.used) faults.push(`${used} is used, ${plan.used} is told.`);
  if (plan.stock !== null && plan.waste !== plan.count * plan.stock - used) faults.push(`The waste is not ${plan.waste}.`);
  if (plan.bound > plan.count) faults.push(`The bound ${plan.bound} is above the ${plan.count} used.`);
  return faults;
};

/** Listed pieces must be there as often as listed; a need without a list, by its length. */
const missing = (plan: CuttingPlan, needs: readonly Need[], cuttable: Length | null): readonly string[] => {
  const left = new Map<string, number>();
  const add = (name: string, by: number) => left.set(name, (left.get(name) ?? 0) + by);
  const byLength = new Set<string>();
  for (const need of needs) {
    if (need.cuts.length === 0) {
      byLength.add(`${need.garment}, ${need.label.uk}`);
      add(`${need.garment}, ${need.label.uk}`, need.quantity);
    }
    for (const cut of need.cuts) {
      const joined = cuttable !== null && cut.breadth !== null ? Math.max(1, Math.ceil(cut.breadth / cuttable)) : 1;
      add(`${need.garment}, ${cut.label}, ${cut.length}`, cut.count * joined);
    }
  }
  for (const pattern of plan.patterns)
    for (const { garment, label, length } of pattern.pieces) {
      const name = `${garment}, ${label}`;
      if (byLength.has(name)) add(name, -length * pattern.times);
      else add(`${name}, ${length}`, -pattern.times);
    }
  return [...left].filter(([, count]) => count !== 0).map(([name, count]) => `${name}: ${count} too few.`);
};
