import type { Garment } from "#lib/casting/wardrobe";
import { versionMeant } from "#lib/constructions/versions";
import type { Staging } from "#lib/staging/staging";
import { type OpenApproval, openApprovals } from "./openApprovals";
import { isPartOfGarment, type OtherTask, openTasks } from "./otherWork";

/** Approvals still to be given that wait for each other, so that none could ever be; by code, null when there are none. */
export const circleOf = (staging: Staging, garments: readonly Garment[]): readonly string[] | null => {
  const open = openApprovals(staging, garments);
  const waits = new Map(open.map((approval) => [approval.code, waitsOf(approval, open, staging, garments)]));
  const cleared = new Set<string>();
  const walk = (code: string, path: readonly string[]): readonly string[] | null => {
    if (path.includes(code)) return path.slice(path.indexOf(code));
    if (cleared.has(code)) return null;
    for (const next of waits.get(code) ?? []) {
      const circle = walk(next, [...path, code]);
      if (circle) return circle;
    }
    cleared.add(code);
    return null;
  };
  for (const { code } of open) {
    const circle = walk(code, []);
    if (circle) return circle;
  }
  return null;
};

/** Approvals that one waits for: through its samples, or through anything that holds its prototype up. */
const waitsOf = (
  approval: OpenApproval,
  open: readonly OpenApproval[],
  staging: Staging,
  garments: readonly Garment[],
): readonly string[] => {
  if (approval.prototype === null) return approval.samples.flatMap(({ waitsFor }) => waitsFor ?? []);
  const prototype = garments.find(({ number }) => number === approval.prototype)!;
  const materials = materialsOf(prototype, staging);
  const holding = open.filter(
    ({ code, set, material }) => code !== approval.code && (set === prototype.set || (material !== null && materials.has(material))),
  );
  const tasks = openTasks(staging.otherWork).filter((task) => holds(task, prototype, materials));
  return [...holding.map(({ code }) => code), ...tasks.flatMap(({ waitsFor }) => waitsFor ?? [])];
};

/** Whether the prototype waits for the task: work that waits for the prototype's own approval holds only the others up. */
const holds = (task: OtherTask, prototype: Garment, materials: ReadonlySet<string>): boolean => {
  if (isPartOfGarment(task) && task.garment === prototype.number) return true;
  if (task.origin === "sample" || task.waitsFor === prototype.set) return false;
  const gated = task.gates !== null && (task.garment === prototype.number || (task.set !== null && task.set === prototype.set));
  return gated || (task.material !== null && materials.has(task.material));
};

const materialsOf = ({ construction, version, materials }: Garment, { constructions }: Staging): ReadonlySet<string> => {
  const needs = versionMeant(constructions, construction ?? "", version)?.needs ?? [];
  return new Set([...Object.values(materials), ...needs.flatMap(({ material }) => material ?? [])]);
};
