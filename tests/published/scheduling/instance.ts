import type { LevellingProblem } from "#lib/levelling/problem";
import { isMultiSkill, multiSkillProblem } from "./multiSkill";
import { isRcpsp, rcpspProblem } from "./rcpsp";
import { isTardiness, tardinessProblem } from "./tardiness";

/** A published instance, whatever its kind, as the engine takes it. */
export interface Instance {
  readonly id: string;
  readonly kind: "rcpsp" | "multi-skill" | "tardiness";
  readonly problem: LevellingProblem;
  /** Best objective known. */
  readonly best: number;
  /** Proved: no plan is better. */
  readonly lower: number;
  /** Null where the set has none. */
  readonly criticalPath: number | null;
}

/** Recognise a line by its fields; null when it is none of the three kinds. */
export function instanceOf(line: unknown): Instance | null {
  if (typeof line !== "object" || line === null) return null;
  if (isMultiSkill(line)) {
    return { id: line.id, kind: "multi-skill", problem: multiSkillProblem(line), best: line.best, lower: line.lower, criticalPath: null };
  }
  if (isRcpsp(line)) {
    return { id: line.id, kind: "rcpsp", problem: rcpspProblem(line), best: line.best, lower: line.lower, criticalPath: line.criticalPath };
  }
  if (isTardiness(line)) {
    return { id: line.id, kind: "tardiness", problem: tardinessProblem(line), best: line.optimum, lower: line.optimum, criticalPath: null };
  }
  return null;
}
