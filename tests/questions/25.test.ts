import { describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import { bible } from "#lib/questions/bible";
import { ask, askable, small } from "./asked";

const LOT = "the dye lot";
const PROTOTYPE = "who approved its prototype, and when";

describe("25. In ten years, could a stranger remake this from our bible?", () => {
  /** Ten garments are made; the Larks and Snowflakes are each of one dye lot that nobody has noted, and the Snowflakes' prototype is not approved. */
  it("five of ten: the tutus want their dye lots, the Snowflakes their approval", async () => {
    const asked = await askable(await small(), 0);
    expect(bible(asked.plan)).toEqual({
      garments: 10,
      missing: [
        { garment: "WL 001", what: [LOT] },
        { garment: "WL 002", what: [LOT] },
        ...["WL 003", "WL 004", "WL 005"].map((garment) => ({ garment, what: [LOT, PROTOTYPE] })),
      ],
      kinds: [
        [LOT, 5],
        [PROTOTYPE, 3],
      ],
    });
    expect((await ask(25, asked)).says[0]).toBe("5 garments of 10 could be made again from what is written down.");
  });

  it("all of them once every material of theirs has a lot with its number and the prototype is approved", async () => {
    const staging = await small(({ sets, lots, materials }) => ({
      sets: sets.map((set) => ({ ...set, approvedOn: "2027-02-01" as PlainDate })),
      lots: [...lots, ...materials.map(({ code }) => ({ ...lots[0]!, code: `D-${code}`, material: code, dyeLot: "7", quantity: 1 }))],
    }));
    expect((await ask(25, await askable(staging, 0))).says).toEqual(["Yes: all 10 garments can be made again from what is written down."]);
  });

  it("not without the dancer's measurements, a supplier, or a construction", async () => {
    const staging = await small(({ measurements, offers, pieces }) => ({
      measurements: measurements.filter(({ of }) => !("performer" in of && of.performer === "sil")),
      offers: offers.filter(({ material }) => material !== "zip"),
      pieces: pieces.map((piece) => (piece.code === "lark-headpiece" ? { ...piece, construction: null } : piece)),
    }));
    const { missing } = bible((await askable(staging, 0)).plan);
    expect(missing.slice(5)).toEqual([
      { garment: "WL 009", what: ["who sells its materials", "the body it was made for"] },
      { garment: "WL 010", what: ["how it is made"] },
    ]);
  });
});
