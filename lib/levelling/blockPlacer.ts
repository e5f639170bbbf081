import { earliestAfter, lagTooLong } from "./lags";
import { type Choices, placeNode } from "./placeNode";
import type { Schedule } from "./schedule";
import { whyNot } from "./whyNot";

/** Attempts to move the beginning of a block so that its greatest lags hold. */
const MOST_ATTEMPTS = 300;

/** Places one block of nodes at a time: mostly one node, or several tied by greatest lags. */
export class BlockPlacer {
  private readonly notBefore: Int32Array;

  constructor(
    private readonly schedule: Schedule,
    private readonly choices: Choices,
  ) {
    this.notBefore = new Int32Array(schedule.compiled.count);
  }

  /** -1, or a pinned node that starts before one of the block can be done. */
  place(block: Int32Array): number {
    if (block.length === 1) return this.placeOne(block[0]!);
    const { schedule } = this;
    const { recording } = schedule;
    schedule.recording = true;
    const broken = this.attempts(block);
    schedule.recording = recording;
    return broken;
  }

  /** A node alone has no greatest lag to keep. */
  private placeOne(node: number): number {
    const { schedule, choices } = this;
    if (schedule.unplaced[node] !== null) return -1;
    const from = this.earliestStart(node);
    if (schedule.isPlaced(node)) {
      if (from < 0 || schedule.start[node]! < from) return node;
    } else if (from < 0) {
      schedule.unplaced[node] = { reason: "waits for an unplaced one", detail: this.waitsFor(node) };
      return -1;
    } else if (!placeNode(schedule, node, Math.max(from, choices.notBefore?.[node] ?? 0), choices)) {
      schedule.unplaced[node] = whyNot(schedule.compiled, node);
      return -1;
    }
    return this.brokenPin(node)?.node ?? -1;
  }

  private attempts(block: Int32Array): number {
    const { schedule } = this;
    for (const node of block) this.notBefore[node] = this.choices.notBefore?.[node] ?? 0;
    const mark = schedule.mark();
    const before = Array.from(block, (node) => schedule.unplaced[node]!);
    const given = new Set<number>();
    for (let attempt = 0; ; attempt++) {
      const outcome = this.attempt(block, given);
      if (outcome.kind === "placed") return -1;
      if (outcome.kind === "pin") return outcome.node;
      schedule.takeBack(mark);
      block.forEach((node, i) => {
        schedule.unplaced[node] = before[i]!;
      });
      const { earlier, later, by } = outcome;
      if (attempt >= MOST_ATTEMPTS || schedule.isPlaced(earlier)) {
        given.add(schedule.isPlaced(later) ? earlier : later);
        for (const node of block) this.notBefore[node] = 0;
        attempt = 0;
      } else {
        this.notBefore[earlier] = Math.max(this.notBefore[earlier]!, outcome.start + by);
      }
    }
  }

  private attempt(
    block: Int32Array,
    given: ReadonlySet<number>,
  ): { kind: "placed" } | { kind: "pin"; node: number } | { kind: "apart"; earlier: number; later: number; start: number; by: number } {
    const { schedule } = this;
    for (const node of block) {
      if (schedule.unplaced[node] !== null) continue;
      if (given.has(node)) {
        schedule.unplaced[node] = {
          reason: "no time left in the calendars",
          detail: "It cannot follow the step before it closely enough.",
        };
        continue;
      }
      const from = this.earliestStart(node);
      if (from < 0) {
        if (schedule.isPlaced(node)) return { kind: "pin", node };
        schedule.unplaced[node] = { reason: "waits for an unplaced one", detail: this.waitsFor(node) };
        continue;
      }
      if (schedule.isPlaced(node)) {
        if (schedule.start[node]! < from) return { kind: "pin", node };
      } else if (!placeNode(schedule, node, Math.max(from, this.notBefore[node]!), this.choices)) {
        schedule.unplaced[node] = whyNot(schedule.compiled, node);
        continue;
      }
      const broken = this.brokenPin(node) ?? this.tooFarApart(node);
      if (broken !== null) return broken;
    }
    return { kind: "placed" };
  }

  /** -1 when one before it has no place. */
  private earliestStart(node: number): number {
    const { compiled, end } = this.schedule;
    const { links } = compiled;
    let from = this.schedule.compiled.tasks[node]?.pin || compiled.fittings[node]?.pin ? 0 : compiled.release[node]!;
    for (let i = links.intoFirst[node]!; i < links.intoFirst[node + 1]!; i++) {
      const link = links.into[i]!;
      const before = links.before[link]!;
      if (!this.schedule.isPlaced(before)) return -1;
      from = Math.max(from, earliestAfter(compiled, link, end[before]!));
    }
    return from;
  }

  private waitsFor(node: number): string {
    const { compiled } = this.schedule;
    const { links, problem } = compiled;
    const names: string[] = [];
    for (let i = links.intoFirst[node]!; i < links.intoFirst[node + 1]!; i++) {
      const before = links.before[links.into[i]!]!;
      if (!this.schedule.isPlaced(before)) names.push(problem.nodes[before]!.id);
    }
    return names.join(", ");
  }

  /** A pinned follower that starts too soon after `node`. */
  private brokenPin(node: number): { kind: "pin"; node: number } | null {
    const { compiled, start, end } = this.schedule;
    const { links, problem } = compiled;
    for (let i = links.outFirst[node]!; i < links.outFirst[node + 1]!; i++) {
      const link = links.out[i]!;
      const after = links.after[link]!;
      if (problem.nodes[after]!.pin !== null && start[after]! >= 0 && start[after]! < earliestAfter(compiled, link, end[node]!))
        return { kind: "pin", node: after };
    }
    return null;
  }

  private tooFarApart(node: number): { kind: "apart"; earlier: number; later: number; start: number; by: number } | null {
    const { compiled, start, end } = this.schedule;
    const { links } = compiled;
    const check = (link: number): { kind: "apart"; earlier: number; later: number; start: number; by: number } | null => {
      if (links.maxLag[link]! < 0) return null;
      const earlier = links.before[link]!;
      const later = links.after[link]!;
      if (start[earlier]! < 0 || start[later]! < 0) return null;
      const by = lagTooLong(compiled, link, end[earlier]!, start[later]!);
      return by > 0 ? { kind: "apart", earlier, later, start: start[earlier]!, by } : null;
    };
    for (let i = links.intoFirst[node]!; i < links.intoFirst[node + 1]!; i++) {
      const apart = check(links.into[i]!);
      if (apart !== null) return apart;
    }
    for (let i = links.outFirst[node]!; i < links.outFirst[node + 1]!; i++) {
      const apart = check(links.out[i]!);
      if (apart !== null) return apart;
    }
    return null;
  }
}
