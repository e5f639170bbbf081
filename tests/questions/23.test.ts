import { describe, expect, it } from "vitest";
import { ADDED, addCostumes, mostMade } from "#lib/questions/addCostumes";
import { moreCostumes } from "#lib/questions/moreCostumes";
import { ask, askable, only, small } from "./asked";

describe("23. If the designer adds six costumes now, what is the honest answer?", () => {
  /** A unitard takes 346 min and two fittings of 30 and 15; nothing is learnt outside a set: 6 x 346 = 34 h 36 and 6 x 45 = 4 h 30. */
  it("six unitards more: 39 h 06, and they fit", async () => {
    const asked = await askable(await small());
    const data = await moreCostumes(asked, { like: "wind-unitard", count: 6, due: null });
    const more = Object.fromEntries(data.skills.map((one) => [one.skill, one.more]));
    // The press, 20 min each, is hand work.
    expect(more).toEqual({ stretch: 6 * 326, hand: 6 * 20, fit: 6 * 45 });
    expect([data.fits, data.most, data.added.length, data.late]).toEqual([true, 6, 6, []]);
    expect((await ask(23, asked, { like: "wind-unitard" })).says[0]).toMatch(/^Yes: 6 costumes more fit in, for 39 h 06 more work; /);
  });

  /** The measuring was on 8 Jan, three days ago. */
  it("none by a day that is past, and that is proved", async () => {
    const asked = await askable(await only("wind-unitard"), 0);
    const data = await moreCostumes(asked, { like: "wind-unitard", count: 2, due: "measuring" });
    expect([data.fits, data.proved, data.most, data.late.map(({ garment }) => garment)]).toEqual([false, true, 0, data.added]);
    const { says } = await ask(23, asked, { like: "wind-unitard", count: "2", due: "measuring" });
    expect(says.join(" ")).toMatch(/^No, not all of them: .* That is proved: .* not one of them fits/);
  });

  it("asks nobody to sew what nobody can: six headpieces without a milliner have no place", async () => {
    const { makers, ...staging } = await only("wind-unitard", "lark-headpiece");
    const asked = await askable({ ...staging, makers: makers.filter(({ code }) => code !== "ilka") }, 0);
    const before = asked.plan.answer.plan.unplaced.length;
    const data = await moreCostumes(asked, { like: "lark-headpiece", count: 1, due: null });
    expect([data.fits, data.addedFinish, data.unplaced > before]).toEqual([false, null, true]);
  });

  it("adds them at the end, in a set of their own where the piece has one, for its wearers in turn", async () => {
    const staging = await small();
    const added = addCostumes(staging, { like: "flake-tutu", count: 5, due: "opening" });
    expect(added.casting.filter(({ role }) => role === ADDED).map(({ performer }) => performer)).toEqual([
      "petra",
      "suri",
      "wren",
      "petra",
      "suri",
    ]);
    expect(added.pieces.at(-1)).toMatchObject({ code: ADDED, construction: "romantic-tutu", set: ADDED, due: "opening" });
    expect(added.pieces.slice(0, -1)).toEqual(staging.pieces);
    expect(mostMade(staging)).toBe("flake-tutu");
  });
});
