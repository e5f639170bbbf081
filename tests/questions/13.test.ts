import { describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { Call } from "#lib/casting/casting";
import { sharing } from "#lib/questions/sharing";
import { ask, askable, small } from "./asked";

const show = (from: number, to: number): Call => ({ performer: null, date: "2027-03-06" as PlainDate, from, to, kind: "performance" });

describe("13. Can two casts share this set on a two-show day, dry and legally?", () => {
  it("only the Lark's headpiece is shared, by Ines of the first cast and Mira of the second", async () => {
    expect(sharing(await small(), null, null).shared).toEqual([
      { garment: "WL 010", piece: "lark-headpiece", dancers: ["ines", "mira"], casts: ["first", "second"] },
    ]);
  });

  /** 14:00 to 15:00 and 19:30 to 20:30: four hours and a half, and eight are needed. */
  it("it is not dry in the four hours and a half between a matinee and an evening, and is in ten hours", async () => {
    const staging = await small(({ calls }) => ({ calls: [...calls, show(1170, 1230), show(840, 900)] }));
    expect(sharing(staging, null, null)).toMatchObject({ gap: 270, dry: false });
    expect(sharing(staging, null, 600)).toMatchObject({ gap: 600, dry: true });
  });

  it("is no: a second one, or one cast for both shows", async () => {
    const { says } = await ask(13, await askable(await small(), 0));
    expect(says[0]).toMatch(/^No: one garment is shared/);
    expect(says[2]).toBe("Let one cast dance both shows, or have one second one: WL 010.");
  });

  it("and nothing of the tutus, of which each dancer has her own", async () => {
    expect((await ask(13, await askable(await small(), 0), { piece: "lark-tutu" })).says).toEqual([
      "No garment is shared by dancers of two casts.",
    ]);
  });
});
