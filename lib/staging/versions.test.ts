import { describe, expect, it } from "vitest";
import { breakDown } from "#lib/breakdown/breakDown";
import { garmentsOf } from "#lib/casting/garments";
import { compareStagings } from "./compare";
import { edited, faultsWith, smallFiles, smallStaging } from "./fixtures";
import { readStaging } from "./readStaging";
import { writeStaging } from "./writeStaging";

const FIRST = smallFiles().get("constructions/skirt.json")!;
const SECOND = FIRST.replace('"version":1', '"version":2').replace("[30,60,90]", "[30,70,90]");
const both = { "constructions/skirt@2.json": SECOND };
/** The Snow skirts keep to a version. */
const pinned = (version: string) => {
  const [headings, ...rows] = smallFiles().get("pieces.csv")!.split("\n");
  return {
    "pieces.csv": [`${headings},version`, ...rows.map((row) => `${row},${row.startsWith("snow-skirt") ? version : ""}`)].join("\n"),
  };
};

describe("a staging with two versions of a construction", () => {
  it("makes a piece by the newest, unless it keeps to one", () => {
    const madeBy = (version: string) => {
      const staging = smallStaging({ ...both, ...pinned(version) });
      return breakDown(staging, garmentsOf(staging))
        .slice(0, 3)
        .map((work) => work.construction?.version);
    };
    expect(madeBy("")).toEqual([2, 2, 2]);
    expect(madeBy("1")).toEqual([1, 1, 2]);
  });

  it("is written in files that read back to the same", () => {
    const staging = smallStaging({ ...both, ...pinned("1") });
    const files = writeStaging(staging);
    expect([...files.keys()].filter((name) => name.startsWith("constructions/"))).toEqual([
      "constructions/skirt.json",
      "constructions/skirt@2.json",
    ]);
    expect(readStaging(files)).toEqual({ ok: true, value: staging });
  });

  it("refuses a version that is not there, and a version of nothing", () => {
    expect(faultsWith({ ...both, ...pinned("3") })).toEqual(["pieces.csv:2:version: skirt has no version 3. Use one of 1, 2."]);
    expect(faultsWith(edited("pieces.csv", "price,stock\n", "price,version\n"))).toContain(
      'pieces.csv:3:version: "ST 3" is not a count. Write a whole number from 1 to 999999999.',
    );
  });

  it("judges parameters by the version the piece keeps to", () => {
    const without = SECOND.replace('{"code":"partnered","label":"Partnered","kind":"yes-no","value":false}', "").replace("},]", "}]");
    const files = { "constructions/skirt@2.json": without };
    expect(faultsWith({ ...files, ...pinned("1") })).toEqual([]);
    expect(faultsWith({ ...files, ...pinned("2") })).toEqual([
      'pieces.csv:2:parameters: skirt has no parameter "partnered". Use one of layers.',
    ]);
  });

  it("is told from one with the older alone by the version added", () => {
    expect(compareStagings(smallStaging(), smallStaging(both)).map(({ file, text }) => [file, text])).toEqual([
      ["constructions/skirt@2.json", "Version 2 of skirt is added."],
    ]);
    expect(compareStagings(smallStaging(both), smallStaging()).map(({ text }) => text)).toEqual(["Version 2 of skirt is removed."]);
  });
});
