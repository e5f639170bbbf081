import { Busy } from "./busy";
import type { Working } from "./clockStore";
import type { Compiled } from "./compiled";
import type { Interval, Unplaced } from "./problem";
import { Profile } from "./profile";
import { WorkList } from "./workList";

const NOBODY: readonly Working[] = [];

/** Where a task may go: what a search for a place returns. */
export interface Slot {
  readonly start: number;
  readonly end: number;
  readonly crew: readonly Working[];
  readonly overtime: boolean;
}

export interface OpenVisit {
  readonly performer: number;
  readonly fitter: number;
  readonly room: number;
  start: number;
  end: number;
  readonly fittings: number[];
}

/** A plan being made: what is placed so far and what that leaves free. Every change can be taken back. */
export class Schedule {
  /** -1 while not placed. */
  readonly start: Int32Array;
  readonly end: Int32Array;
  readonly overtime: Uint8Array;
  readonly crew: (readonly Working[])[];
  readonly visitOf: Int32Array;
  /** Null where a visit was called off; its number is given to another. */
  readonly visits: (OpenVisit | null)[] = [];
  private readonly freeNumbers: number[] = [];
  readonly unplaced: (Omit<Unplaced, "node"> | null)[];
  /** Per maker: tasks from start to end, and visits they fit at. */
  readonly work: WorkList[];
  readonly appointments: Busy[];
  readonly performers: Busy[];
  readonly machines: Profile[];
  readonly rooms: Profile[];
  private readonly undo: (() => void)[] = [];
  /** Nodes whose place was changed while changes were remembered. */
  readonly touched: number[] = [];
  /** Changes are only remembered while something may have to be taken back. */
  recording = false;

  constructor(readonly compiled: Compiled) {
    const { problem, count } = compiled;
    this.start = new Int32Array(count).fill(-1);
    this.end = new Int32Array(count).fill(-1);
    this.overtime = new Uint8Array(count);
    this.crew = new Array<readonly Working[]>(count).fill(NOBODY);
    this.visitOf = new Int32Array(count).fill(-1);
    this.unplaced = new Array<null>(count).fill(null);
    this.work = problem.makers.map(
      (_, maker) => new WorkList(compiled.clocks.ofMaker(maker, false), compiled.clocks.ofMaker(maker, true), problem.horizon),
    );
    this.appointments = problem.makers.map(() => new Busy());
    this.performers = problem.performers.map(() => new Busy());
    this.machines = problem.machines.map(usedBefore);
    this.rooms = problem.rooms.map(usedBefore);
  }

  isPlaced(node: number): boolean {
    return this.start[node]! >= 0;
  }

  /** A point to come back to with `takeBack`. */
  mark(): number {
    return this.undo.length;
  }

  takeBack(mark: number): void {
    while (this.undo.length > mark) this.undo.pop()!();
  }

  /** What was done so far stays. */
  forget(): void {
    this.undo.length = 0;
    this.touched.length = 0;
  }

  get visitCount(): number {
    return this.visits.length - this.freeNumbers.length;
  }

  /** How to take back a change that concerns a node. */
  remember(node: number, change: () => void): void {
    if (!this.recording) return;
    this.undo.push(change);
    this.touched.push(node);
  }

  put(node: number, slot: Slot): void {
    this.putDown(node, slot);
    this.remember(node, () => this.takeUp(node));
  }

  /** A task loses its place. */
  take(node: number): void {
    const slot = this.slotOf(node);
    this.takeUp(node);
    this.remember(node, () => this.putDown(node, slot));
  }

  private slotOf(node: number): Slot {
    return { start: this.start[node]!, end: this.end[node]!, crew: this.crew[node]!, overtime: this.overtime[node] === 1 };
  }

  private putDown(node: number, { start, end, crew, overtime }: Slot): void {
    this.seat(node, start, end, crew, overtime);
    if (end === start) return;
    for (const { maker } of crew) this.work[maker]!.add(start, end, node);
    this.hold(node, start, end, 1);
  }

  private takeUp(node: number): void {
    const start = this.start[node]!;
    const end = this.end[node]!;
    this.start[node] = this.end[node] = -1;
    if (end === start) return;
    for (const { maker } of this.crew[node]!) this.work[maker]!.remove(start);
    this.hold(node, start, end, -1);
  }

  /** An appointment inside a pausing task makes it end later, one called off earlier. */
  prolong(node: number, end: number): void {
    const start = this.start[node]!;
    const old = this.end[node]!;
    const change = (from: number, to: number): void => {
      this.end[node] = to;
      for (const { maker } of this.crew[node]!) this.work[maker]!.change(start, start, to);
      this.hold(node, Math.min(from, to), Math.max(from, to), to > from ? 1 : -1);
    };
    change(old, end);
    this.remember(node, () => change(end, old));
  }

  openVisit(node: number, visit: Omit<OpenVisit, "fittings">, skill: number, overtime: boolean): void {
    this.seat(node, visit.start, visit.end, [{ maker: visit.fitter, skill }], overtime);
    const number = this.freeNumbers.pop() ?? this.visits.length;
    this.holdVisit(number, { ...visit, fittings: [node] });
    this.remember(node, () => {
      this.start[node] = this.end[node] = -1;
      this.freeVisit(number);
    });
  }

  /** A visit is called off: its fittings lose their place. */
  closeVisit(number: number): void {
    const visit = this.visits[number]!;
    const slots = visit.fittings.map((node) => this.slotOf(node));
    this.freeVisit(number);
    visit.fittings.forEach((node, i) => {
      this.start[node] = this.end[node] = -1;
      this.remember(node, () => {
        const { start, end, crew, overtime } = slots[i]!;
        this.seat(node, start, end, crew, overtime);
        if (i > 0) return;
        this.freeNumbers.splice(this.freeNumbers.indexOf(number), 1);
        this.holdVisit(number, visit);
      });
    });
  }

  private holdVisit(number: number, visit: OpenVisit): void {
    this.visits[number] = visit;
    for (const node of visit.fittings) this.visitOf[node] = number;
    this.appointments[visit.fitter]!.add(visit.start, visit.end, number);
    this.performers[visit.performer]!.add(visit.start, visit.end, number);
    this.rooms[visit.room]!.add(visit.start, visit.end, 1);
  }

  private freeVisit(number: number): void {
    const visit = this.visits[number]!;
    this.visits[number] = null;
    this.freeNumbers.push(number);
    for (const node of visit.fittings) this.visitOf[node] = -1;
    this.appointments[visit.fitter]!.remove(visit.start);
    this.performers[visit.performer]!.remove(visit.start);
    this.rooms[visit.room]!.add(visit.start, visit.end, -1);
  }

  /** One more fitting at the end of a visit, or at its beginning. */
  joinVisit(node: number, number: number, start: number, end: number, skill: number, overtime: boolean): void {
    const visit = this.visits[number]!;
    const old = { start: visit.start, end: visit.end };
    const first = start < visit.start;
    this.seat(node, start, end, [{ maker: visit.fitter, skill }], overtime);
    this.visitOf[node] = number;
    if (first) visit.fittings.unshift(node);
    else visit.fittings.push(node);
    this.stretchVisit(visit, Math.min(start, old.start), Math.max(end, old.end));
    this.remember(node, () => {
      this.start[node] = this.end[node] = this.visitOf[node] = -1;
      if (first) visit.fittings.shift();
      else visit.fittings.pop();
      this.stretchVisit(visit, old.start, old.end);
    });
  }

  private stretchVisit(visit: OpenVisit, start: number, end: number): void {
    this.appointments[visit.fitter]!.change(visit.start, start, end);
    this.performers[visit.performer]!.change(visit.start, start, end);
    this.rooms[visit.room]!.add(visit.start, visit.end, -1);
    this.rooms[visit.room]!.add(start, end, 1);
    visit.start = start;
    visit.end = end;
  }

  private seat(node: number, start: number, end: number, crew: readonly Working[], overtime: boolean): void {
    this.start[node] = start;
    this.end[node] = end;
    this.crew[node] = crew;
    this.overtime[node] = overtime ? 1 : 0;
  }

  private hold(node: number, start: number, end: number, sign: number): void {
    for (const { machine, count } of this.compiled.tasks[node]!.machines) this.machines[machine]!.add(start, end, sign * count);
  }
}

/** Machines or rooms as they are before anything of this problem has a place. */
function usedBefore({ count, taken = [] }: { readonly count: number; readonly taken?: readonly Interval[] }): Profile {
  const profile = new Profile(count);
  for (const { start, end } of taken) profile.add(start, end, 1);
  return profile;
}
