import { describe, expect, it } from "vitest";
import { pictureKind } from "./pictureKind";

const bytes = (text: string) => Uint8Array.from(text, (sign) => sign.charCodeAt(0));

describe("what a picture is", () => {
  it("is told by its first bytes", () => {
    // The signature as RFC 2083 and ISO/IEC 15948 print it: 137 80 78 71 13 10 26 10.
    expect(pictureKind(Uint8Array.of(137, 80, 78, 71, 13, 10, 26, 10, 0))).toBe("png");
    expect(pictureKind(bytes("\xff\xd8\xff\xe0\x00\x10JFIF"))).toBe("jpeg");
    expect(pictureKind(bytes("RIFF\x00\x00\x00\x00WEBPVP8 "))).toBe("webp");
  });

  it("is nothing for what may carry a script, is cut short, or only says so", () => {
    for (const text of [
      "<svg onload='x'/>",
      "<?xml version='1.0'?>",
      "GIF89a",
      "%PDF-1.7",
      "RIFF\x00\x00\x00\x00WAVE",
      "\x89PNG",
      "photo.png",
      "",
    ])
      expect(pictureKind(bytes(text))).toBeNull();
  });
});
