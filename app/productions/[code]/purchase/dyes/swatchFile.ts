import type { SwatchType } from "#prisma/stock/dyeBook";

/** More than a photograph of a swatch need be. */
const MOST_BYTES = 2_000_000;

type Swatch = { readonly bytes: Uint8Array; readonly type: SwatchType };

const starts = (bytes: Uint8Array, signature: readonly number[], from = 0): boolean =>
  signature.every((byte, at) => bytes[from + at] === byte);

/** What kind of picture it is by its first bytes, whatever it is called; null for anything else. */
const typeOf = (bytes: Uint8Array): SwatchType | null => {
  if (starts(bytes, [0x89, 0x50, 0x4e, 0x47])) return "image/png";
  if (starts(bytes, [0xff, 0xd8, 0xff])) return "image/jpeg";
  return starts(bytes, [0x52, 0x49, 0x46, 0x46]) && starts(bytes, [0x57, 0x45, 0x42, 0x50], 8) ? "image/webp" : null;
};

/** A photograph that was sent with a form: none, a picture, or what is wrong with it. */
export const readSwatch = async (file: unknown): Promise<{ readonly swatch: Swatch | null; readonly wrong: string | null }> => {
  if (!(file instanceof File) || file.size === 0) return { swatch: null, wrong: null };
  if (file.size > MOST_BYTES) return { swatch: null, wrong: "It is larger than 2 MB. Send a smaller picture of the swatch." };
  const bytes = new Uint8Array(await file.arrayBuffer());
  const type = typeOf(bytes);
  return type
    ? { swatch: { bytes, type }, wrong: null }
    : { swatch: null, wrong: "It is no PNG, JPEG or WebP picture. Send one of those." };
};
