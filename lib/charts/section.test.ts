import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { netLayers, type WantedLayer } from "#lib/breakdown/netLayers";
import type { DriverValue, GarmentWork } from "#lib/breakdown/work";
import { LENGTH_PER_INCH } from "#lib/units/quantities";
import { sectionDrawing } from "./section";

const inches = (count: number) => Math.round(count * LENGTH_PER_INCH);
const driver = (code: string, value: number): DriverValue => ({
  code,
  label: { uk: code, us: code },
  unit: "length",
  value,
  arithmetic: "",
});
const DRIVERS = [
  driver("hipLine", inches(36)),
  driver("waistLine", inches(25)),
  driver("basque", inches(4.5)),
  driver("tacks", 400),
  driver("hoopWires", 1),
  driver("hoopRing", inches(86)),
  driver("hoopCut", inches(94)),
];

const skirt = (depths: readonly number[], casing = 3, drivers: readonly DriverValue[] = DRIVERS): GarmentWork => ({
  garment: "S 1",
  construction: null,
  drivers,
  operations: [],
  fittings: [],
  needs: [],
  layers: netLayers(
    depths.map(
      (depth, index): WantedLayer => ({
        depth: inches(depth),
        fullness: 8,
        seam: inches(31),
        drop: inches((depths.length - index) * 0.5),
        net: "net",
        material: "n",
        cuttable: inches(54),
        dyed: "none",
        casing: index + 1 === casing,
      }),
    ),
  ),
  notes: [],
});
const draw = (work: GarmentWork, lengths: "in" | "cm" = "in") => sectionDrawing(work, { lengths, words: "uk" })!;
const DEPTHS = [4, 8, 12, 15];

describe("the section of a net skirt", () => {
  it("moves the points of a layer, and of that layer only, when its depth changes", () => {
    const [before, after] = [draw(skirt(DEPTHS)), draw(skirt([4, 8, 10, 15]))];
    const changed = before.layers.map((layer, index) => layer.end.x !== after.layers[index]?.end.x);
    expect(changed).toEqual([false, false, true, false]);
    expect(after.layers[2]!.net.at(-1)!.x).toBeLessThan(before.layers[2]!.net.at(-1)!.x);
    expect([before.layers[2]?.depth, after.layers[2]?.depth]).toEqual(["12", "10"]);
  });

  it("draws every layer to one scale, at its own row and along its own ray", () => {
    const depth = fc.integer({ min: 2, max: 18 });
    fc.assert(
      fc.property(fc.array(depth, { minLength: 1, maxLength: 16 }), (depths) => {
        const work = skirt(depths, 0);
        const { layers, scale } = draw(work);
        for (const [index, { row, end }] of layers.entries()) {
          const degrees = (Math.atan2(end.y - row.y, end.x - row.x) * 180) / Math.PI;
          expect(Math.hypot(end.x - row.x, end.y - row.y)).toBeCloseTo(work.layers[index]!.depth * scale, 6);
          expect(degrees).toBeCloseTo(-3 + 2.5 * (depths.length - 1 - index), 6);
          expect(row.y - layers.at(-1)!.row.y).toBeCloseTo((work.layers[index]!.drop - work.layers.at(-1)!.drop) * scale, 6);
        }
      }),
    );
  });

  it("keeps everything inside the picture, whatever the skirt", () => {
    const depths = fc.array(fc.integer({ min: 1, max: 25 }), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(depths, fc.integer({ min: 1, max: 20 }), fc.integer({ min: 0, max: 12 }), (depths, casing, basque) => {
        const drawing = draw(skirt(depths, casing, [...DRIVERS.filter(({ code }) => code !== "basque"), driver("basque", inches(basque))]));
        const layers = drawing.layers.flatMap(({ net, leader }) => [...net, ...leader]);
        const points = [...drawing.body, ...layers, ...drawing.tacks.flat(), ...drawing.dimensions.flatMap(({ from, to }) => [from, to])];
        const outside = points.filter(({ x, y }) => x < 0 || y < 0 || x > drawing.width || y > drawing.height);
        expect(outside).toEqual([]);
      }),
      { examples: [[[1], 1, 0]] },
    );
  });

  it("puts the hoop on the layer that carries the casing, as far out as its ring says", () => {
    const drawing = draw(skirt(DEPTHS));
    expect(drawing.hoop!.at.x).toBeCloseTo(drawing.centre + (inches(86) / (2 * Math.PI)) * drawing.scale, 6);
    expect(drawing.words.hoop[0]).toBe("hoop in layer 3");
    expect(draw(skirt(DEPTHS, 0)).hoop).toBeNull();
    expect(
      draw(
        skirt(
          DEPTHS,
          3,
          DRIVERS.filter(({ code }) => code !== "hoopWires"),
        ),
      ).hoop,
    ).toBeNull();
  });

  it("speaks in the reader's units, in one sentence", () => {
    expect(draw(skirt(DEPTHS)).words.sentence).toBe(
      "Cross-section of the skirt: 4 layers of net, 4 in to 15 in deep, a hoop in layer 3, 400 tacks, 41 3/8 in across.",
    );
    const metric = draw(skirt(DEPTHS), "cm").words;
    expect([metric.topDepth, metric.depthHead, metric.depths[0], metric.roll.endsWith(" m")]).toEqual([
      "38.1 cm, top layer",
      "deep, cm",
      "10.2",
      true,
    ]);
  });

  it("is not drawn for a garment without layers", () => {
    expect(sectionDrawing(skirt([]), { lengths: "in", words: "uk" })).toBeNull();
  });
});
