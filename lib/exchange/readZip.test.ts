import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { readZip } from "./readZip";

const read = (entries: Record<string, Uint8Array>) => readZip("swans.zip", zipSync(entries));
const csv = strToU8("code\na\n");

describe("reading a zip", () => {
  it("takes tables and constructions out of the folder and passes over the rest", () => {
    const files = read({
      "swans/pieces.csv": csv,
      "swans/constructions/tutu.json": strToU8("{}"),
      "swans/picture.png": new Uint8Array(5),
      "__MACOSX/swans/._pieces.csv": csv,
    });
    expect(files.ok && [...files.value.keys()]).toEqual(["pieces.csv", "constructions/tutu.json"]);
  });

  it("keeps the constructions' own folder", () => {
    const files = read({ "constructions/a.json": strToU8("{}"), "constructions/b.json": strToU8("{}") });
    expect(files.ok && [...files.value.keys()]).toEqual(["constructions/a.json", "constructions/b.json"]);
  });

  it("refuses a small zip that would grow past 10 MB, before unpacking it", () => {
    const bomb = zipSync({ "a.csv": new Uint8Array(60_000_000) });
    expect(bomb.length).toBeLessThan(100_000);
    expect(readZip("bomb.zip", bomb)).toMatchObject({ ok: false, error: [{ file: "bomb.zip" }] });
  });

  it("never unpacks more than an entry declares", () => {
    const liar = zipSync({ "a.csv": new Uint8Array(5_000_000).fill(97) });
    const view = new DataView(liar.buffer, liar.byteOffset);
    const directory = view.getUint32(liar.length - 6, true);
    view.setUint32(directory + 24, 10, true);
    const files = readZip("liar.zip", liar);
    expect(files.ok ? [...files.value.values()].join("").length : 0).toBeLessThanOrEqual(10);
  });

  it("refuses too many files, what is no zip, and text that is not UTF-8", () => {
    const many = Object.fromEntries(Array.from({ length: 201 }, (_, index) => [`${index}.csv`, csv]));
    expect(read(many)).toMatchObject({ ok: false });
    expect(readZip("x.zip", strToU8("no zip"))).toMatchObject({
      ok: false,
      error: [{ problem: "The file is not a zip that can be read." }],
    });
    expect(read({ "a.csv": new Uint8Array([0xe9, 0x2c, 0x0a]) })).toMatchObject({ ok: false, error: [{ file: "a.csv" }] });
  });

  it("reads UTF-16 with its mark", () => {
    const wide = new Uint8Array([0xff, 0xfe, 0x61, 0, 0x0a, 0]);
    const files = read({ "a.csv": wide });
    expect(files.ok && files.value.get("a.csv")).toBe("a\n");
  });
});
