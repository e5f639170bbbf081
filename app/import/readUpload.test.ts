import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { readUpload, type Sent } from "./readUpload";

const sent = (name: string, content: Uint8Array | string, size?: number): Sent => {
  const bytes = typeof content === "string" ? strToU8(content) : content;
  return { name, size: size ?? bytes.length, arrayBuffer: async () => bytes.slice().buffer };
};

const faultsOf = async (...files: Sent[]) => {
  const read = await readUpload(files);
  return read.ok ? [] : read.error.map((fault) => `${fault.file}: ${fault.problem}`);
};

describe("readUpload", () => {
  it("reads files and zips together, by name", async () => {
    const zip = zipSync({ "pieces.csv": strToU8("code\nA\n"), "notes.txt": strToU8("no") });
    const read = await readUpload([sent("roles.csv", "code\nB\n"), sent("all.zip", zip)]);
    expect(read.ok && [...read.value]).toEqual([
      ["roles.csv", "code\nB\n"],
      ["pieces.csv", "code\nA\n"],
    ]);
  });

  it("refuses nothing, too much, a file that comes twice and what is no text, each with its name", async () => {
    expect(await faultsOf(sent("", ""))).toEqual(["upload: No file was chosen."]);
    expect(await faultsOf(sent("a.csv", "x", 10_000_001))).toEqual(["upload: The files together are larger than 10 MB."]);
    expect(await faultsOf(sent("a.csv", "x"), sent("a.csv", "y"))).toEqual(["a.csv: The file comes twice."]);
    expect(await faultsOf(sent("a.csv", new Uint8Array([0xc3, 0x28])))).toEqual(["a.csv: The file is not UTF-8 text."]);
  });
});
