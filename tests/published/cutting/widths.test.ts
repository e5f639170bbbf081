import { describe, expect, it } from "vitest";
import type { Need } from "#lib/breakdown/work";
import { layOut } from "#lib/cutting/layOut";
import { piecesOf } from "#lib/cutting/pieces";
import { type RollPiece, rowsAcross, widthsFor } from "#lib/cutting/rows";
import { LENGTH_PER_INCH, LENGTH_PER_YARD } from "#lib/units/quantities";

const inches = (count: number) => count * LENGTH_PER_INCH;
const depthOf = (rows: readonly { readonly depth: number }[]) => rows.reduce((sum, row) => sum + row.depth, 0);

const needOf = (cuts: Need["cuts"]): Need => ({
  garment: "LM 1",
  role: "net",
  label: { uk: "net", us: "net" },
  material: "NET",
  measure: "length",
  quantity: 1,
  cuts,
  oneLotSet: null,
  operation: "cut",
  arithmetic: "",
});
const roll = (need: Need, cuttable: number) =>
  layOut(piecesOf(need, cuttable, null), {
    ...{ material: "NET", set: null, lot: null, cuttable, stock: null },
    ...{ kerf: 0, keep: null, turned: false },
  })!;

describe("widths of the roll", () => {
  it("a cover 120 in wide and 120 in long from 54 in goods takes 3 widths and 10 yd (designandmake.net, glossary, width)", () => {
    expect(widthsFor(inches(120), inches(54))).toBe(3);
    expect(roll(needOf([{ label: "cover", length: inches(120), breadth: inches(120), count: 1 }]), inches(54))).toMatchObject({
      used: 10 * LENGTH_PER_YARD,
    });
  });

  it("60 in goods give 58 in, since about two inches go in selvedges (greenetextile.com, cuttable width): two 29 in panels lie side by side", () => {
    const panels: RollPiece[] = Array.from({ length: 2 }, () => ({ length: inches(36), breadth: inches(29) }));
    expect(rowsAcross(panels, inches(60 - 2))).toHaveLength(1);
    // The same panels from 58 in goods, whose cuttable width is less, go one across.
    expect(rowsAcross(panels, inches(58 - 2))).toHaveLength(2);
  });
});

/** Five layers of 5, 7, 9, 11 and 13 panels 29 x 36 in: published counts (livvywoods.blogspot.com, tutu); rows worked by us from them. */
describe("romantic panels", () => {
  const layers = [5, 7, 9, 11, 13].map((count) =>
    Array.from({ length: count }, (): RollPiece => ({ length: inches(36), breadth: inches(29) })),
  );

  it("45 panels two across are 23 rows shared, 25 layer by layer, 45 one across", () => {
    expect(rowsAcross(layers.flat(), inches(58))).toHaveLength(23);
    expect(depthOf(rowsAcross(layers.flat(), inches(58)))).toBe(23 * LENGTH_PER_YARD);
    expect(layers.map((layer) => rowsAcross(layer, inches(58)).length).reduce((a, b) => a + b)).toBe(25);
    expect(rowsAcross(layers.flat(), inches(57))).toHaveLength(45);
  });
});

/** Twelve layers, 2 to 15 in deep in even steps, four layers each of 4, 5 and 6 widths (dancebtc.org, design process: 2 to 15 in, 4 to 6 lengths). */
describe("net strips across the roll", () => {
  const skirt = (widths: readonly number[]) =>
    needOf(
      Array.from({ length: 12 }, (_, at) => ({
        label: `layer ${at + 1}`,
        // Thirteen inches in eleven steps, to the nearest unit of length.
        length: Math.round(inches(2) + (inches(13) * at) / 11),
        breadth: null,
        count: widths[Math.floor(at / 4)]!,
      })),
    );
  const yards = (length: number) => Number((length / LENGTH_PER_YARD).toFixed(2));

  it("15.22 yd of 54 in roll make 90 yd of strip, 12.38 yd of 72 in roll 96 yd (worked by us)", () => {
    const narrow = roll(skirt([4, 5, 6]), inches(54));
    expect(yards(narrow.used)).toBe(15.22);
    expect(narrow.patterns[0]!.pieces.length * inches(54)).toBe(90 * LENGTH_PER_YARD);
    const wide = roll(skirt([3, 4, 5]), inches(72));
    expect(yards(wide.used)).toBe(12.38);
    expect(wide.patterns[0]!.pieces.length * inches(72)).toBe(96 * LENGTH_PER_YARD);
  });
});
