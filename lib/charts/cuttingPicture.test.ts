import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CutPiece } from "#lib/cutting/cuttingPlan";
import { layOut } from "#lib/cutting/layOut";
import { cuttingPicture, cuttingScale } from "./cuttingPicture";

const goods = { material: "NET", set: null, lot: null, cuttable: 54, stock: null, kerf: 0, keep: 10, turned: false };
const size = { cuttable: 54, bar: 12, width: 200, scale: 2, tape: { every: 36, parts: 4 } };
const strips = (...depths: readonly number[]) =>
  layOut(
    depths.map((length) => ({ garment: "LM 1", label: `layer ${length}`, length, breadth: null })),
    goods,
  )!;

describe("the picture of a cutting plan", () => {
  it("is at true scale, broken between strips, with a tape that runs on", () => {
    const plan = strips(40, 40, 40, 30);
    const lines = cuttingPicture(plan.patterns[0]!, plan.used, size);
    // A line holds 100 units: two strips of 40, then one of 40 and one of 30.
    expect(lines.map(({ from, to, width, height, goesOn }) => [from, to, width, height, goesOn])).toEqual([
      [0, 80, 160, 108, true],
      [80, 150, 140, 108, false],
    ]);
    expect(lines[1]!.pieces.map(({ x, width }) => [x, width])).toEqual([
      [0, 80],
      [80, 60],
    ]);
    expect(lines[1]!.ticks.filter(({ mark }) => mark !== null)).toEqual([
      { x: (108 - 80) * 2, mark: 3 },
      { x: (144 - 80) * 2, mark: 4 },
    ]);
    expect(lines[0]!.groups).toMatchObject([{ label: "layer 40", count: 2, x: 80, y: 54, width: 160 }]);
  });

  it("draws a rod as a bar over the whole width, with its rest", () => {
    const rod = layOut([{ garment: "LM 1", label: "bone", length: 60, breadth: null }], { ...goods, cuttable: null, stock: 100, kerf: 2 })!;
    const scale = cuttingScale(null, 100, 0, 200);
    const [line] = cuttingPicture(rod.patterns[0]!, 100, { ...size, cuttable: null, scale });
    expect(line).toMatchObject({ width: 200, height: 12, rests: [{ x: 124, width: 76, height: 12, kept: true }] });
  });

  it("breaks a piece only where it is longer than the page", () => {
    const plan = strips(250);
    const lines = cuttingPicture(plan.patterns[0]!, plan.used, size);
    expect(lines.map(({ pieces }) => pieces.map(({ width, broken }) => [width, broken]))).toEqual([
      [[200, true]],
      [[200, true]],
      [[100, false]],
    ]);
  });

  it("shows every piece whole, in one line, inside its line and nowhere over another", () => {
    const piece = fc.tuple(fc.integer({ min: 1, max: 90 }), fc.integer({ min: 1, max: 54 }));
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 25 }), fc.boolean(), (sizes, turned) => {
        const cut = sizes.map(([length, breadth], at) => ({ garment: "LM 1", label: `p${at}`, length, breadth }));
        const plan = layOut(cut, { ...goods, turned })!;
        const lines = cuttingPicture(plan.patterns[0]!, plan.used, size);
        const drawn = lines.flatMap(({ pieces }) => pieces);
        const area = (one: CutPiece) => one.length * one.breadth! * 4;
        expect(drawn.reduce((sum, { width, height }) => sum + width * height, 0)).toBe(
          plan.patterns[0]!.pieces.reduce((sum, one) => sum + area(one), 0),
        );
        for (const line of lines) {
          expect(line.width).toBeLessThanOrEqual(200);
          for (const { x, y, width, height } of [...line.pieces, ...line.rests])
            expect(x >= 0 && y >= 0 && x + width <= line.width && y + height <= line.height).toBe(true);
        }
        expect(lines.reduce((sum, { width }) => sum + width, 0)).toBe(plan.used * 2);
      }),
    );
  });
});
