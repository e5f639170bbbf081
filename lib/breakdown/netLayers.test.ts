import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { netLayers, widthsFor } from "./netLayers";
import { panelRows } from "./panelRows";

const layer = (change: object) => ({
  depth: 20_000,
  fullness: 8,
  seam: 60_000,
  drop: 0,
  net: "net",
  material: "n",
  cuttable: 100_000,
  dyed: "none" as const,
  casing: false,
  ...change,
});

describe("netLayers", () => {
  it("strips lie across the roll: roll is widths x depth, strip is widths x cuttable width", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40_000 }),
        fc.integer({ min: 10, max: 200 }),
        fc.integer({ min: 30_000, max: 250_000 }),
        (depth, tenths, cuttable) => {
          const [computed] = netLayers([layer({ depth, fullness: tenths / 10, cuttable })]);
          expect(computed).toMatchObject({ roll: computed!.widths * depth, strip: computed!.widths * cuttable });
        },
      ),
    );
  });

  it("wider net never takes more widths for the same skirt, and the strip is never short by more than is let go", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 200 }),
        fc.integer({ min: 30_000, max: 200_000 }),
        fc.nat(50_000),
        (tenths, cuttable, wider) => {
          const wanted = (tenths / 10) * 60_000;
          expect(widthsFor(wanted, cuttable + wider)).toBeLessThanOrEqual(widthsFor(wanted, cuttable));
          expect(widthsFor(wanted, cuttable) * cuttable).toBeGreaterThanOrEqual(wanted - 0.05 * cuttable - 1e-6);
        },
      ),
    );
  });

  it("counts layers from the lowest", () => {
    expect(netLayers([layer({}), layer({ casing: true })]).map(({ layer, casing }) => [layer, casing])).toEqual([
      [1, false],
      [2, true],
    ]);
  });
});

describe("panelRows", () => {
  it("sharing rows never takes more of them than layer by layer, nor fewer than the panels fill", () => {
    fc.assert(
      fc.property(
        fc.array(fc.nat(40), { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 60, max: 200 }),
        (panels, breadth, cuttable) => {
          const { across, shared, layerByLayer } = panelRows(panels, breadth, cuttable);
          const total = panels.reduce((sum, count) => sum + count, 0);
          expect(shared).toBeLessThanOrEqual(layerByLayer);
          expect(shared * across).toBeGreaterThanOrEqual(total);
          expect((shared - 1) * across).toBeLessThan(Math.max(total, 1));
        },
      ),
    );
  });

  it("says so when a panel does not lie across at all", () => {
    expect(panelRows([3], 61, 60)).toEqual({ across: 0, shared: 3, layerByLayer: 3 });
  });
});
