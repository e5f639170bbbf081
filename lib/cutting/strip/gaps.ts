/** The wall at the edge of the frame: higher than any piece. */
const EDGE = 1e9;

/** The skyline as a row of gaps from left to right, each with its start, width and level; neighbours differ in level. */
export class Gaps {
  readonly starts: Int32Array;
  readonly levels: Int32Array;
  readonly widths: Int32Array;
  count = 1;

  constructor(width: number, pieces: number) {
    this.starts = new Int32Array(pieces + 2);
    this.levels = new Int32Array(pieces + 2);
    this.widths = new Int32Array(pieces + 2);
    this.widths[0] = width;
  }

  /** The lowest, and of the lowest the leftmost. */
  lowest(): number {
    let gap = 0;
    for (let at = 1; at < this.count; at++) if (this.levels[at]! < this.levels[gap]!) gap = at;
    return gap;
  }

  leftWall(gap: number): number {
    return gap === 0 ? EDGE : this.levels[gap - 1]! - this.levels[gap]!;
  }

  rightWall(gap: number): number {
    return gap === this.count - 1 ? EDGE : this.levels[gap + 1]! - this.levels[gap]!;
  }

  /** Raises a part of a gap, from its left or its right end. */
  raise(gap: number, wide: number, high: number, atRight: boolean): void {
    const { starts, levels, widths } = this;
    const parted = wide < widths[gap]!;
    if (parted) {
      for (let at = this.count; at > gap; at--) {
        starts[at] = starts[at - 1]!;
        levels[at] = levels[at - 1]!;
        widths[at] = widths[at - 1]!;
      }
      this.count++;
      const leftPart = atRight ? widths[gap]! - wide : wide;
      widths[gap + 1]! -= leftPart;
      starts[gap + 1]! += leftPart;
      widths[gap] = leftPart;
    }
    const raised = parted && atRight ? gap + 1 : gap;
    levels[raised]! += high;
    this.join(raised);
  }

  /** Joins a gap to neighbours on its level. */
  private join(gap: number): void {
    const { levels, widths } = this;
    if (gap < this.count - 1 && levels[gap] === levels[gap + 1]) {
      widths[gap]! += widths[gap + 1]!;
      this.drop(gap + 1);
    }
    if (gap > 0 && levels[gap] === levels[gap - 1]) {
      widths[gap - 1]! += widths[gap]!;
      this.drop(gap);
    }
  }

  private drop(gap: number): void {
    for (let at = gap; at < this.count - 1; at++) {
      this.starts[at] = this.starts[at + 1]!;
      this.levels[at] = this.levels[at + 1]!;
      this.widths[at] = this.widths[at + 1]!;
    }
    this.count--;
  }
}
