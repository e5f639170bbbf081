import { describe, expect, it } from "vitest";
import type { GarmentWork, Need, WorkOperation } from "#lib/breakdown/work";
import type { Garment } from "#lib/casting/wardrobe";
import { dyeWork } from "./dyeWork";

const step = (code: string, on: readonly string[] = [], more: Partial<WorkOperation> = {}) =>
  ({
    code,
    skill: "dye",
    machine: "dye vat",
    waitsFor: on.map((one) => ({ on: one, lagMinutes: 0, lagKind: "elapsed" })),
    ...more,
  }) as WorkOperation;
const work = (garment: string, construction: string, operations: readonly WorkOperation[], needs: readonly Partial<Need>[] = []) =>
  ({ garment, construction: { code: construction, version: 1 }, operations, needs }) as unknown as GarmentWork;
const garment = (number: string, set: string | null) => ({ number, set, piece: "tights" }) as Garment;
const staging = { materials: [{ code: "net", colour: "moss" }], sets: [{ code: "herons", oneDyeLot: true }] } as never;

describe("what is dyed", () => {
  it("is cloth before it is cut, by its length, and one of the set", () => {
    const skirt = work(
      "LM 1",
      "bell-tutu",
      [step("dye"), step("cut", ["dye"], { skill: "net", machine: null })],
      [
        { operation: "dye", material: "net", measure: "length", quantity: 900 },
        { operation: "cut", material: "lace", measure: "length", quantity: 5 },
      ],
    );
    expect(dyeWork(staging, [garment("LM 1", "herons")], [skirt])).toEqual([
      { garment: "LM 1", operation: "dye", what: "cloth", material: "net", set: "herons", load: 900, colour: "moss, net" },
    ]);
  });

  it("is a garment by the piece when nothing is cut after, in the colour written down for it; a sample before it is none", () => {
    const tights = (number: string) => work(number, "tights", [step("sample"), step("dye", ["sample"])]);
    const both = [garment("LM 2", null), garment("LM 3", null)];
    const items = dyeWork(staging, both, [tights("LM 2"), tights("LM 3")], new Map([["LM 3", "deep"]]));
    expect(items.map(({ garment: number, operation, what, load, colour }) => [number, operation, what, load, colour])).toEqual([
      ["LM 3", "dye", "garment", 1, "deep"],
      ["LM 2", "dye", "garment", 1, "tights"],
    ]);
  });
});
