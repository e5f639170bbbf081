import { type Clock, makeClock, scaledClock, sharedClock } from "./clock";
import type { LevellingProblem, Stretch } from "./problem";

/** Someone who works at the pace their skill gives. */
export interface Working {
  readonly maker: number;
  readonly skill: number;
}

/** Work of one standard minute, in units of speed x pace. */
export const UNITS = 1_000_000;

/** Clocks of makers, crews and machines with opening hours, each built once. */
export class ClockStore {
  /** Every minute up to the horizon, at rate 1. */
  readonly always: Clock;
  /** The workroom's hours, else the minutes in which somebody has normal hours, at rate 1: what a lag of working time is counted in. */
  readonly workroom: Clock;
  private readonly kept = new Map<string, Clock>();
  private readonly normal: readonly Clock[];
  private readonly full: readonly Clock[];

  constructor(private readonly problem: LevellingProblem) {
    this.always = makeClock([{ start: 0, end: problem.horizon, rate: 1 }]);
    const workroom = makeClock(problem.open?.map(({ start, end }) => ({ start, end, rate: 1 })) ?? union(problem));
    this.workroom = workroom.total > 0 ? workroom : this.always;
    const made: { readonly stretches: readonly Stretch[]; readonly clock: Clock }[] = [];
    // Whoever keeps the same hours shares one clock: it stays in the processor's cache.
    const clockOf = (stretches: readonly Stretch[]): Clock => {
      const same = made.find((one) => areAlike(one.stretches, stretches));
      if (same !== undefined) return same.clock;
      const clock = makeClock(stretches.map(({ start, end, speed }) => ({ start, end, rate: speed })));
      made.push({ stretches, clock });
      return clock;
    };
    this.full = problem.makers.map(({ calendar }) => clockOf(calendar));
    this.normal = problem.makers.map(({ calendar }) => clockOf(calendar.filter((stretch) => !stretch.overtime)));
  }

  /** A maker's own time; one unit is a minute at speed 1. */
  ofMaker(maker: number, overtime: boolean): Clock {
    return (overtime ? this.full : this.normal)[maker]!;
  }

  /** Time in which one maker can work at machines with opening hours. */
  ofMakerAt(maker: number, machines: readonly number[], overtime: boolean): Clock {
    if (machines.length === 0) return this.ofMaker(maker, overtime);
    return this.once(`${maker}${overtime ? "+" : "-"}@${machines.join()}`, () =>
      sharedClock([this.ofMaker(maker, overtime), ...machines.map((machine) => this.ofMachine(machine))]),
    );
  }

  /** Time in which all of a crew can work (at machines with opening hours), at the pace of the slowest; UNITS a standard minute. */
  ofCrew(crew: readonly Working[], machines: readonly number[], overtime: boolean): Clock {
    const paces = crew.map(({ maker, skill }) => `${maker}x${this.problem.makers[maker]!.pace[skill]}`).sort();
    return this.once(`${paces.join()}${overtime ? "+" : "-"}@${machines.join()}`, () =>
      sharedClock([
        ...crew.map(({ maker, skill }) => scaledClock(this.ofMaker(maker, overtime), this.problem.makers[maker]!.pace[skill]!)),
        ...machines.map((machine) => this.ofMachine(machine)),
      ]),
    );
  }

  /** Time in which all these machines are open, one unit a minute. */
  ofMachines(machines: readonly number[]): Clock {
    if (machines.length === 0) return this.always;
    return this.once(`@${machines.join()}`, () => {
      const open = sharedClock(machines.map((machine) => this.ofMachine(machine)));
      return makeClock(Array.from(open.starts, (start, i) => ({ start, end: open.ends[i]!, rate: 1 })));
    });
  }

  private ofMachine(machine: number): Clock {
    const open = this.problem.machines[machine]!.calendar ?? [{ start: 0, end: this.problem.horizon }];
    return this.once(`#${machine}`, () => makeClock(open.map(({ start, end }) => ({ start, end, rate: Number.MAX_SAFE_INTEGER }))));
  }

  private once(key: string, make: () => Clock): Clock {
    const found = this.kept.get(key);
    if (found !== undefined) return found;
    const made = make();
    this.kept.set(key, made);
    return made;
  }
}

const areAlike = (a: readonly Stretch[], b: readonly Stretch[]): boolean =>
  a.length === b.length && a.every(({ start, end, speed }, i) => start === b[i]!.start && end === b[i]!.end && speed === b[i]!.speed);

function union(problem: LevellingProblem): { start: number; end: number; rate: number }[] {
  const all = problem.makers
    .flatMap((maker) => maker.calendar.filter((stretch) => !stretch.overtime && stretch.speed > 0))
    .sort((a, b) => a.start - b.start || a.end - b.end);
  const merged: { start: number; end: number; rate: number }[] = [];
  for (const { start, end } of all) {
    const last = merged.at(-1);
    if (last !== undefined && start <= last.end) last.end = Math.max(last.end, end);
    else merged.push({ start, end, rate: 1 });
  }
  return merged;
}
