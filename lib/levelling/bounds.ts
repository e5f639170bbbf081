import { type Compiled, compile } from "./compiled";
import { earliestEnds } from "./earliestEnds";
import { type MachineBound, machineBound } from "./machineBound";
import type { Bounds, LevellingProblem } from "./problem";
import { type SkillBound, skillBound } from "./skillBound";

/** What no plan can do better than, and why. Each bound is the greatest of several arguments, never their sum. */
export function boundsOf(problem: LevellingProblem, compiled: Compiled = compile(problem)): Bounds {
  const ends = earliestEnds(compiled);
  const chains = problem.dues.reduce((sum, due) => sum + due.weight * Math.max(0, Math.min(ends[due.node]!, problem.horizon) - due.at), 0);
  const chainFinish = ends.reduce((latest, end) => (end > problem.horizon ? latest : Math.max(latest, end)), 0);
  const skills = skillBound(compiled, ends);
  const machines = machineBound(compiled, ends);
  const finish = Math.max(chainFinish, skills.finish, machines.finish);
  const weightedLateness = Math.max(chains, skills.weightedLateness);
  const reasons: string[] = [];
  if (chains > 0 && chains >= skills.weightedLateness)
    reasons.push("Some chains of work are too long for their dates even with everybody free for them.");
  if (skills.weightedLateness > chains) reasons.push(skills.reason);
  if (skills.overtimeMinutes !== null) reasons.push(skills.overtimeReason);
  if (finish > 0) reasons.push(finishReason(finish, chainFinish, skills, machines));
  return { weightedLateness, finish, overtimeMinutes: skills.overtimeMinutes, reasons };
}

function finishReason(finish: number, chain: number, skills: SkillBound, machines: MachineBound): string {
  if (finish === chain) return "The end is that of the longest chain of work, with releases and the calendars of the quickest makers.";
  return finish === machines.finish ? machines.reason : skills.finishReason;
}
