import { describe, expect, it } from "vitest";
import type { OtherTask } from "#lib/approvals/otherWork";
import { hiredChanges } from "#lib/questions/hiredChanges";
import { ask, askable, only, small } from "./asked";

const task = (code: string, skill: OtherTask["skill"]): OtherTask => ({
  ...{ code, origin: "alteration", title: `${code} it`, garment: "WL 001", set: null, material: null, gates: null, skill },
  ...{
    minutes: [30, 30, 30],
    machine: null,
    priority: 2,
    due: null,
    waitsFor: null,
    shownFor: null,
    askedBy: "",
    askedOn: null,
    doneOn: null,
  },
});
const hired = async (...otherWork: readonly OtherTask[]) => {
  const staging = await only("hazel-bodice");
  return askable({ ...staging, pieces: staging.pieces.map((piece) => ({ ...piece, source: "hire", price: 6000 })), otherWork }, 0);
};

describe("12. Which hired pieces have irreversible alterations?", () => {
  it("none in the small staging: nothing is hired", async () => {
    expect((await ask(12, await askable(await small(), 0))).says).toEqual(["Nothing is hired."]);
  });

  it("not a bodice that is only labelled and tacked by hand", async () => {
    const asked = await hired(task("tack", "hand"));
    expect(hiredChanges(asked.plan).map(({ what, reversible }) => [what, reversible])).toEqual([
      ["Label", true],
      ["tack it", true],
    ]);
    expect((await ask(12, asked)).says).toEqual(["None of one hired garment: what is done to them is undone again."]);
  });

  it("one that is to be dyed, first in the list", async () => {
    const asked = await hired(task("tack", "hand"), task("dye", "dye"));
    expect(hiredChanges(asked.plan)[0]).toEqual({ garment: "WL 001", what: "dye it", from: "asked for", reversible: false });
    expect((await ask(12, asked)).says).toEqual(["WL 001: ask the owner before anything is cut, dyed or let out."]);
  });
});
