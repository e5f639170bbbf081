import { describe, expect, it } from "vitest";
import { openTickets } from "#lib/questions/openTickets";
import { ask, askable, only, small } from "./asked";

describe("4. Which open tickets have no free person with the skill?", () => {
  it("none: net, pattern, boned, tailoring, stretch, hand and fitting have two people or more, millinery and dye have Ilka", async () => {
    const asked = await askable(await small());
    expect(openTickets(asked.plan)).toEqual([]);
    expect((await ask(4, asked)).says).toEqual(["None: every ticket has a person with the skill, and a time."]);
  });

  /**
   * Without Ilka's millinery, six tickets of the headpiece have nobody: pattern 45, frame 90, bind 60, base 60, motifs 126, assemble 45, in all 426 min.
   * Stones, fixings and finish (hand) and its four fittings (first, final, two covers) only wait for them.
   */
  it("six of the headpiece once the milliner has gone, and what waits for them", async () => {
    const { makers, ...staging } = await only("lark-headpiece");
    const asked = await askable({
      ...staging,
      makers: makers.map((maker) => (maker.code === "ilka" ? { ...maker, skills: { hand: 600 } } : maker)),
    });
    const tickets = openTickets(asked.plan);
    const nobody = tickets.filter(({ skilled }) => skilled.length === 0);
    expect(nobody.map(({ key, minutes }) => [key.slice(7), minutes])).toEqual([
      ["pattern", 45],
      ["frame", 90],
      ["bind", 60],
      ["base", 60],
      ["motifs", 126],
      ["assemble", 45],
    ]);
    expect(tickets.length).toBe(6 + 3 + 4);
    expect((await ask(4, asked)).says[0]).toMatch(/^6 tickets of 7 h 06 that nobody has the skill for; 0 .*; 7 that only wait/);
  });

  it("calls tickets work orders in a production in US words", async () => {
    const { production, ...staging } = await only("wind-unitard");
    const asked = await askable({ ...staging, production: { ...production, words: "us" } });
    expect((await ask(4, asked)).says).toEqual(["None: every work order has a person with the skill, and a time."]);
  });
});
