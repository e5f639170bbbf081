import { mkdtemp, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readPhotograph, removePhotograph, storePhotograph } from "./photographs";

const before = process.env.TARLATAN_DATA;
beforeAll(async () => {
  process.env.TARLATAN_DATA = await mkdtemp(join(tmpdir(), "tarlatan-photographs-"));
});
afterAll(async () => {
  await rm(process.env.TARLATAN_DATA ?? "", { recursive: true });
  if (before === undefined) delete process.env.TARLATAN_DATA;
  else process.env.TARLATAN_DATA = before;
});

const picture = (width: number, height: number) => sharp({ create: { width, height, channels: 3, background: "#a33" } });

describe("a photograph", () => {
  it("is made smaller, turned upright, and loses all it carried beside the picture", async () => {
    const given = await picture(2400, 1200)
      .withExif({ IFD0: { Copyright: "secret place", Make: "camera" } })
      .withMetadata({ orientation: 6 })
      .jpeg()
      .toBuffer();
    expect((await sharp(given).metadata()).exif).toBeDefined();
    const stored = await storePhotograph(given);
    // Orientation 6 is a picture lying on its side: it stands upright now (TIFF 6.0, Orientation; from memory).
    expect(stored).toMatchObject({ ok: true, value: { width: 800, height: 1600, mediaType: "image/jpeg" } });
    if (!stored.ok) return;
    const whole = await readPhotograph(stored.value.path, "whole");
    const { format, exif, icc, orientation } = await sharp(whole ?? undefined).metadata();
    expect({ format, exif, orientation: orientation ?? 1, icc }).toEqual({
      format: "jpeg",
      exif: undefined,
      orientation: 1,
      icc: undefined,
    });
    expect((await sharp((await readPhotograph(stored.value.path, "small")) ?? undefined).metadata()).height).toBe(480);
    await removePhotograph(stored.value.path);
    expect(await readPhotograph(stored.value.path, "whole")).toBeNull();
  });

  it("is drawn anew, so that what was hidden behind it is gone", async () => {
    const hidden = Buffer.concat([await picture(40, 40).png().toBuffer(), Buffer.from("<script>alert(1)</script>")]);
    const stored = await storePhotograph(hidden);
    if (!stored.ok) throw new Error(stored.error);
    expect(Buffer.from((await readPhotograph(stored.value.path, "whole")) ?? []).includes("script")).toBe(false);
  });

  it("is refused when it is something else, damaged, or would unfold beyond measure", async () => {
    const svg = Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>');
    const whole = await picture(400, 400).jpeg().toBuffer();
    const huge = await picture(12_000, 6000).png({ compressionLevel: 9 }).toBuffer();
    for (const given of [svg, Buffer.from("RIFF1234WEBPnonsense"), whole.subarray(0, 60), huge])
      expect((await storePhotograph(given)).ok).toBe(false);
    expect((await readdir(process.env.TARLATAN_DATA ?? "", { recursive: true })).filter((name) => /\.\d+$/.test(name))).toEqual([]);
  });

  it("opens no other file, whatever a row says", async () => {
    await expect(readPhotograph("../secret", "whole")).rejects.toThrow("never given");
  });
});
