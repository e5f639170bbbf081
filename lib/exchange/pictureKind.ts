/** A picture a browser shows and that carries no script. */
export type PictureKind = "jpeg" | "png" | "webp";

const startsWith = (bytes: Uint8Array, at: number, signature: readonly number[]): boolean =>
  signature.every((byte, offset) => bytes[at + offset] === byte);

/** `RIFF` and `WEBP`. */
const RIFF = [0x52, 0x49, 0x46, 0x46];
const WEBP = [0x57, 0x45, 0x42, 0x50];

/**
 * What a file is by its first bytes, never by its name: PNG (ISO/IEC 15948, 5.2), JPEG (ITU-T T.81, B.1.1.3: SOI and a marker), WebP
 * (RFC 9649, 2.4). Null for anything else, drawings with scripts in them (SVG) among it.
 */
export const pictureKind = (bytes: Uint8Array): PictureKind | null => {
  if (startsWith(bytes, 0, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return "png";
  if (startsWith(bytes, 0, [0xff, 0xd8, 0xff])) return "jpeg";
  return startsWith(bytes, 0, RIFF) && startsWith(bytes, 8, WEBP) ? "webp" : null;
};
