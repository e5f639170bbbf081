import { beforeAll, describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Asked } from "#lib/questions/answer";
import { injury } from "#lib/questions/injury";
import { ask, askable, only } from "./asked";

let asked: Asked;
beforeAll(async () => {
  asked = await askable(await only("lark-tutu"), 0);
});
const on = (performer: string, day: string) => injury(asked, performer, day as PlainDate);

describe("1. A principal is injured: which garments can the cover wear, with what alterations and hours, and do we still make dress?", () => {
  /** Petra covers Ines: bust 88 for 86 cm, waist 66 for 64, hips and girth alike: 2 cm, within two rows of bars. The alteration is 225 min, a label 6. */
  it("Ines: Petra's first Lark is altered in 3 h 51 and fitted four times, and dress is made", async () => {
    const { garments, uncovered, late } = await on("ines", "2027-02-02");
    expect(garments).toEqual([
      { garment: "WL 001", cover: "petra", kind: "refit", minutes: 231, fittings: 4, larger: 20 * 80, reach: "rows of bars" },
    ]);
    expect([uncovered, late]).toEqual([[], []]);
  });

  it("before anything is begun it is cut for Petra instead", async () => {
    const { garments } = await on("ines", "2027-01-11");
    expect(garments.map(({ kind, garment }) => [kind, garment])).toEqual([["recut", "WL 001"]]);
  });

  /** Nobody stands by for Mira in the second cast; Ines dances the Lark in the first. */
  it("Mira, whom nobody covers, is danced for by Ines of the first cast", async () => {
    const { garments, uncovered } = await on("mira", "2027-02-02");
    expect(uncovered).toEqual([]);
    expect(garments.every(({ cover }) => cover === "ines")).toBe(true);
  });

  it("Sil, for whom there is nobody at all, leaves the Wind without a dancer", async () => {
    expect((await on("sil", "2027-02-02")).uncovered.map(({ role }) => role)).toEqual(["wind"]);
  });

  it("is said in words, on the next Tuesday when no day is given", async () => {
    expect((await ask(1, asked)).says).toEqual([
      "Ines Varro is out from Tue 12 Jan: one garment for Petra Lisk, 3 h 51 of work more and 4 fittings.",
      "Dress is still made: planned again with the covers, nothing is late.",
    ]);
  });
});
