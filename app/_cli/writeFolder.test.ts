import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { writeFolder } from "./writeFolder";

let place: string;
beforeEach(() => {
  place = mkdtempSync(join(tmpdir(), "tarlatan-"));
});
afterEach(() => rmSync(place, { recursive: true }));

describe("a folder written as a whole", () => {
  it("is made with the folders above it", async () => {
    await writeFolder(join(place, "a/b"), new Map([["one.csv", "1"]]));
    expect(readFileSync(join(place, "a/b/one.csv"), "utf8")).toBe("1");
    expect(readdirSync(join(place, "a"))).toEqual(["b"]);
  });

  it("replaces files of the same name and keeps the others", async () => {
    mkdirSync(join(place, "out"));
    writeFileSync(join(place, "out/one.csv"), "old");
    writeFileSync(join(place, "out/other.txt"), "kept");
    await writeFolder(join(place, "out"), new Map([["one.csv", "new"]]));
    expect(readFileSync(join(place, "out/one.csv"), "utf8")).toBe("new");
    expect(readFileSync(join(place, "out/other.txt"), "utf8")).toBe("kept");
  });

  it("may have folders in it, new or there already", async () => {
    mkdirSync(join(place, "out/old"), { recursive: true });
    await writeFolder(join(place, "out"), new Map(["old/one.json", "new/two.json"].map((name) => [name, name])));
    expect(readFileSync(join(place, "out/old/one.json"), "utf8")).toBe("old/one.json");
    expect(readFileSync(join(place, "out/new/two.json"), "utf8")).toBe("new/two.json");
    expect(readdirSync(place)).toEqual(["out"]);
  });

  it("leaves nothing behind when a file cannot be written", async () => {
    const files = new Map([
      ["one.csv", "1"],
      ["one.csv/two.csv", "2"],
    ]);
    await expect(writeFolder(join(place, "out"), files)).rejects.toThrow();
    expect(existsSync(join(place, "out"))).toBe(false);
    expect(readdirSync(place)).toEqual([]);
  });
});
