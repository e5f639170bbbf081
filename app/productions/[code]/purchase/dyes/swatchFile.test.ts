import { describe, expect, it } from "vitest";
import { readSwatch } from "./swatchFile";

const file = (bytes: readonly number[], name = "moss.png") => new File([new Uint8Array(bytes)], name);

describe("the photograph of a swatch", () => {
  it("is known by its bytes, not by its name", async () => {
    expect((await readSwatch(file([0x89, 0x50, 0x4e, 0x47, 1], "moss.txt"))).swatch?.type).toBe("image/png");
    expect((await readSwatch(file([0xff, 0xd8, 0xff, 0]))).swatch?.type).toBe("image/jpeg");
    expect((await readSwatch(file([0x52, 0x49, 0x46, 0x46, 0, 0, 0, 0, 0x57, 0x45, 0x42, 0x50]))).swatch?.type).toBe("image/webp");
    expect(await readSwatch(file([...Buffer.from("<svg onload=alert(1)>")]))).toMatchObject({ swatch: null, wrong: expect.any(String) });
  });

  it("may be left out, and may not be too large", async () => {
    expect(await readSwatch(file([]))).toEqual({ swatch: null, wrong: null });
    expect(await readSwatch("")).toEqual({ swatch: null, wrong: null });
    expect((await readSwatch(file(Array.from({ length: 2_000_001 }, () => 0xff)))).wrong).toContain("2 MB");
  });
});
