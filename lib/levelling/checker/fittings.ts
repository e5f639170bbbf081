import type { LevellingProblem, Plan } from "../problem";
import { coveredBy } from "./capacity";

/** Each fitting by itself: length, step, release, pin, its fitter's skill and hours, and exactly one visit. */
export function fittingFaults(problem: LevellingProblem, plan: Plan): string[] {
  return problem.nodes.flatMap((fitting, index) => {
    const placement = plan.placed[index];
    if (fitting.kind !== "fitting" || !placement) return [];
    const faults: string[] = [];
    const { start, end, makers, overtime, stretches } = placement;
    if (end - start !== fitting.minutes) faults.push(`${fitting.id}: it takes ${end - start} minutes of ${fitting.minutes}.`);
    if (start % Math.max(1, fitting.step) !== 0) faults.push(`${fitting.id}: it starts at ${start}, not on a step of ${fitting.step}.`);
    if (fitting.pin === null && start < fitting.release) faults.push(`${fitting.id}: it starts before its release.`);
    const whole =
      fitting.minutes === 0 ? stretches.length === 0 : stretches.length === 1 && stretches[0]!.start === start && stretches[0]!.end === end;
    if (!whole) faults.push(`${fitting.id}: its stretch is not the fitting.`);
    const visits = plan.visits.filter((visit) => visit.fittings.includes(index));
    const [visit] = visits;
    if (visits.length !== 1 || visit === undefined) return [...faults, `${fitting.id}: it belongs to ${visits.length} visits.`];
    if (visit.performer !== fitting.performer) faults.push(`${fitting.id}: it is in the visit of another performer.`);
    const [person, ...others] = makers;
    if (person === undefined || others.length > 0 || person.maker !== visit.fitter || person.skill !== fitting.fitterSkill) {
      return [...faults, `${fitting.id}: its fitter is not the one of the visit.`];
    }
    const fitter = problem.makers[person.maker]!;
    if (!((fitter.pace[fitting.fitterSkill] ?? 0) > 0)) faults.push(`${fitting.id}: ${fitter.id} cannot fit.`);
    const hours = fitter.calendar.filter((stretch) => stretch.speed > 0 && (overtime || !stretch.overtime));
    if (!coveredBy(hours, start, end)) faults.push(`${fitting.id}: ${fitter.id} is not there.`);
    const { pin } = fitting;
    if (pin !== null && (pin.start !== start || pin.fitter !== person.maker || pin.room !== visit.room))
      faults.push(`${fitting.id}: it is pinned to another time, fitter or room.`);
    return faults;
  });
}
