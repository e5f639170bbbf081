import { Busy } from "./busy";
import type { Working } from "./clockStore";
import type { Compiled } from "./compiled";
import type { Unplaced } from "./problem";
import { Profile } from "./profile";

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
  readonly visits: (OpenVisit | null)[] = [];
  readonly unplaced: (Omit<Unplaced, "node"> | null)[];
  /** Per maker: tasks from start to end, and visits they fit at. */
  readonly work: Busy[];
  readonly appointments: Busy[];
  readonly performers: Busy[];
  readonly machines: Profile[];
  readonly rooms: Profile[];
  private readonly undo: (() => void)[] = [];
  /** Changes are only remembered while something may have to be taken back. */
  recording = false;

  constructor(readonly compiled: Compiled) {
    const { problem, count } = compiled;
    this.start = new Int32Array(count).fill(-1);
    this.end = new Int32Array(count).fill(-1);
    this.overtime = new Uint8Array(count);
    this.crew = Array.from({ length: count }, () => []);
    this.visitOf = new Int32Array(count).fill(-1);
    this.unplaced = new Array<null>(count).fill(null);
    this.work = problem.makers.map(() => new Busy());
    this.appointments = problem.makers.map(() => new Busy());
    this.performers = problem.performers.map(() => new Busy());
    this.machines = problem.machines.map((machine) => new Profile(machine.count));
    this.rooms = problem.rooms.map((room) => new Profile(room.count));
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

  private remember(change: () => void): void {
    if (this.recording) this.undo.push(change);
  }

  put(node: number, slot: Slot): void {
    this.seat(node, slot.start, slot.end, slot.crew, slot.overtime);
    if (slot.end > slot.start) {
      for (const { maker } of slot.crew) this.work[maker]!.add(slot.start, slot.end, node);
      this.hold(node, slot.start, slot.end, 1);
    }
    this.remember(() => {
      this.start[node] = this.end[node] = -1;
      if (slot.end === slot.start) return;
      for (const { maker } of slot.crew) this.work[maker]!.remove(slot.start);
      this.hold(node, slot.start, slot.end, -1);
    });
  }

  /** An appointment inside a pausing task of one maker makes it end later. */
  prolong(node: number, end: number): void {
    const start = this.start[node]!;
    const old = this.end[node]!;
    const change = (from: number, to: number): void => {
      this.end[node] = to;
      for (const { maker } of this.crew[node]!) this.work[maker]!.change(start, start, to);
      this.hold(node, Math.min(from, to), Math.max(from, to), to > from ? 1 : -1);
    };
    change(old, end);
    this.remember(() => change(end, old));
  }

  openVisit(node: number, visit: Omit<OpenVisit, "fittings">, skill: number, overtime: boolean): void {
    const number = this.visits.length;
    this.visits.push({ ...visit, fittings: [node] });
    this.seat(node, visit.start, visit.end, [{ maker: visit.fitter, skill }], overtime);
    this.visitOf[node] = number;
    this.appointments[visit.fitter]!.add(visit.start, visit.end, number);
    this.performers[visit.performer]!.add(visit.start, visit.end, number);
    this.rooms[visit.room]!.add(visit.start, visit.end, 1);
    this.remember(() => {
      this.start[node] = this.end[node] = this.visitOf[node] = -1;
      this.visits.pop();
      this.appointments[visit.fitter]!.remove(visit.start);
      this.performers[visit.performer]!.remove(visit.start);
      this.rooms[visit.room]!.add(visit.start, visit.end, -1);
    });
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
    this.remember(() => {
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
