import { describe, expect, it } from "vitest";
import type { Garment } from "#lib/casting/wardrobe";
import { reasonGroups } from "./reasonGroups";

const garment = (number: string, piece: string, name: string) => ({ number, piece, name }) as Garment;
const garments = [garment("LM 1", "tutu", "Tutu (1 of 3)"), garment("LM 2", "tutu", "Tutu (2 of 3)"), garment("LM 3", "coat", "Coat")];
const reason = (number: string, quantity: number, arithmetic = "") => ({ garment: number, role: "net", quantity, arithmetic });

describe("the reasons of a line", () => {
  it("are told by piece, with what each needs where it is the same", () => {
    expect(reasonGroups([reason("LM 1", 14, "a"), reason("LM 2", 14, "a"), reason("LM 3", 5, "b")], garments)).toEqual([
      { role: "net", name: "Tutu", garments: ["LM 1", "LM 2"], quantity: 28, each: 14, arithmetic: "a" },
      { role: "net", name: "Coat", garments: ["LM 3"], quantity: 5, each: 5, arithmetic: "b" },
    ]);
  });

  it("add up whatever differs", () => {
    expect(reasonGroups([reason("LM 1", 14, "a"), reason("LM 2", 15, "b")], garments)).toEqual([
      { role: "net", name: "Tutu", garments: ["LM 1", "LM 2"], quantity: 29, each: null, arithmetic: "" },
    ]);
  });
});
