import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type HemCell, hem } from "./hem";

const size = { width: 1392, full: 150, barGap: 4, groupGap: 20, leastGroup: 90 };
const hours = fc.integer({ min: 0, max: 4800 });
const cells = fc
  .uniqueArray(fc.tuple(fc.integer({ min: 0, max: 7 }), fc.integer({ min: 0, max: 5 }), hours, hours), {
    minLength: 1,
    maxLength: 40,
    selector: ([a, b]) => 10 * a + b,
  })
  .map((many) => many.map(([code, week, needed, free]): HemCell => ({ code: `s${code}`, week: `w${week}`, needed, free })));

describe("hem picture", () => {
  it("area is hours: every bar's area is scale x full x needed", () => {
    fc.assert(
      fc.property(cells, (many) => {
        const { scale, groups } = hem(many, size);
        for (const group of groups)
          for (const bar of group.bars) {
            const cell = many.find((one) => one.code === group.code && one.week === bar.week)!;
            const area = bar.width * bar.above + (bar.below ? bar.below.width * bar.below.length : 0);
            expect(area).toBeCloseTo(scale * size.full * cell.needed, 4);
          }
      }),
    );
  });

  it("nothing passes the chalk line but what is over, and bars never overlap", () => {
    fc.assert(
      fc.property(cells, (many) => {
        const picture = hem(many, size);
        let right = -Infinity;
        for (const group of picture.groups) {
          expect(group.x).toBeGreaterThan(right);
          right = group.x - 1;
          for (const bar of group.bars) {
            expect(bar.above).toBeLessThanOrEqual(size.full + 1e-9);
            const left = Math.min(bar.x, bar.below?.x ?? bar.x);
            expect(left).toBeGreaterThan(right);
            right = Math.max(bar.x + bar.width, bar.below ? bar.below.x + bar.below.width : 0);
          }
          right = Math.max(right, group.x + group.width);
          expect(right).toBeLessThanOrEqual(group.x + group.width + 1e-6);
        }
        expect(right).toBeLessThanOrEqual(picture.width + 1e-6);
        expect(picture.groups.map((group) => group.over)).toEqual(picture.groups.map((group) => group.over).sort((a, b) => b - a));
      }),
    );
  });

  it("hours add up over groups", () => {
    fc.assert(
      fc.property(cells, (many) => {
        const { groups } = hem(many, size);
        expect(groups.reduce((sum, group) => sum + group.needed, 0)).toBe(many.reduce((sum, cell) => sum + cell.needed, 0));
        expect(groups.reduce((sum, group) => sum + group.free, 0)).toBe(many.reduce((sum, cell) => sum + cell.free, 0));
      }),
    );
  });

  it("a week with no hours free is a bar of six wholly below the line", () => {
    const { groups, scale, hang } = hem(
      [
        { code: "net", week: "w1", needed: 60, free: 0 },
        { code: "net", week: "w2", needed: 0, free: 600 },
      ],
      { ...size, width: 300 },
    );
    const [bar] = groups[0]!.bars;
    expect(bar).toMatchObject({ width: 0, above: 0, below: { over: 60 } });
    expect(bar!.below!.width).toBe(Math.max(6, (scale * 60) / 2));
    expect(hang).toBe(bar!.below!.length);
  });

  it("hangs the skill that is most over first, the rest as they come", () => {
    const own = (code: string, needed: number) => ({ code, week: "w1", needed, free: 100 });
    expect(hem([own("a", 90), own("b", 110), own("c", 150), own("d", 10)], size).groups.map((group) => group.code)).toEqual([
      "c",
      "b",
      "a",
      "d",
    ]);
  });
});
