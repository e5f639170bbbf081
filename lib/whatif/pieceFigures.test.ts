import { describe, expect, it } from "vitest";
import { edited, smallStaging } from "#lib/staging/fixtures";
import { pieceFigures } from "./pieceFigures";

const staging = smallStaging();
const skirt = staging.pieces[0]!;
const figures = (parameters: Readonly<Record<string, string>>) => pieceFigures(staging, { ...skirt, parameters })!;

describe("the figures of a piece", () => {
  it("move with a parameter: two minutes a layer, ten inches of net a layer", () => {
    const [eight, nine] = [figures({ layers: "8" }), figures({ layers: "9" })];
    expect([eight.garments, eight.minutes, nine.minutes[1] - eight.minutes[1]]).toEqual([2, [39, 78, 125], 2]);
    expect(nine.needs[0]!.quantity - eight.needs[0]!.quantity).toBe(10 * 2032);
  });

  it("cost the makers' hours and a share of the pack at its first price", () => {
    // Eight layers take 80 in of a pack of 25 yd for 48.00.
    const { materials, labour, unsold, nobody } = figures({ layers: "8" });
    expect([materials, unsold, nobody]).toEqual([Math.round((4800 * 80) / 900), [], ["fit"]]);
    // Orla works net at 100% and is productive for 85% of an hour of 19.51; nobody fits.
    expect(labour).toBe(Math.round((78 / 60) * (1951 / 0.85)));
  });

  it("say what they leave out: skills that nobody has, materials that nobody sells", () => {
    const nobody = smallStaging({ ...edited("makers.csv", "net=100%; ", ""), "offers.csv": null });
    expect(pieceFigures(nobody, skirt)).toMatchObject({ labour: 0, nobody: ["net", "fit"], materials: 0, unsold: ["net-54"] });
  });

  it("tell what is wrong with a parameter, and work with the construction's own", () => {
    expect(figures({ layers: "99" }).problems).toEqual([expect.stringContaining("99 is outside 1 to 16")]);
    expect(figures({ layers: "99" }).minutes).toEqual(figures({}).minutes);
  });

  it("are none where nobody wears it", () => {
    expect(pieceFigures({ ...staging, casting: [] }, skirt)).toBeNull();
  });
});
