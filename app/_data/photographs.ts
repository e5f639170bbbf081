import { createHash } from "node:crypto";
import { mkdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { dirname, resolve } from "node:path";
import sharp from "sharp";
import { pictureKind } from "#lib/exchange/pictureKind";
import { failed, ok, type Result } from "#lib/result";

/** A picture that lies under the data folder in two sizes. */
export interface StoredPhotograph {
  readonly mediaType: "image/jpeg";
  readonly bytes: number;
  readonly width: number;
  readonly height: number;
  readonly sha256: string;
  readonly path: string;
}

export type PhotographSize = "whole" | "small";

/** Longest side kept, and of the small one. */
const LONGEST: Readonly<Record<PhotographSize, number>> = { whole: 1600, small: 480 };
/** Beyond any camera: a small file may unfold to more than a machine holds. */
const MOST_PIXELS = 60_000_000;

const folder = (): string => resolve(process.cwd(), process.env.TARLATAN_DATA || ".tarlatan");

/** Only what this file has named itself is ever opened. */
const fileOf = (path: string, size: PhotographSize): string => {
  if (!/^photographs\/[\da-f]{2}\/[\da-f]{64}$/.test(path)) throw new Error("A photograph has a path that was never given to one.");
  return resolve(folder(), `${path}.${size}.jpg`);
};

/**
 * Keeps a photograph: what it is, its own bytes tell; it is decoded, turned upright, made smaller and written anew, so that nothing but the
 * picture is left of it: no place, no camera, no thumbnail, no script. Fails, in words, for what is no picture.
 */
export const storePhotograph = async (given: Uint8Array): Promise<Result<StoredPhotograph, string>> => {
  if (pictureKind(given) === null) return failed("That is no photograph: JPEG, PNG and WebP are taken.");
  const drawn = await draw(given, "whole");
  if (!drawn) return failed("That photograph is damaged, or too large to open.");
  const small = (await draw(drawn.data, "small")) ?? drawn;
  const sha256 = createHash("sha256").update(drawn.data).digest("hex");
  const path = `photographs/${sha256.slice(0, 2)}/${sha256}`;
  await put(fileOf(path, "whole"), drawn.data);
  await put(fileOf(path, "small"), small.data);
  const { width, height } = drawn.info;
  return ok({ mediaType: "image/jpeg", bytes: drawn.data.length, width, height, sha256, path });
};

const draw = async (given: Uint8Array, size: PhotographSize) => {
  const side = LONGEST[size];
  try {
    return await sharp(given, { limitInputPixels: MOST_PIXELS, failOn: "error", pages: 1 })
      .autoOrient()
      .resize({ width: side, height: side, fit: "inside", withoutEnlargement: true })
      .flatten({ background: "#ffffff" })
      .toColourspace("srgb")
      .jpeg({ quality: 84 })
      .toBuffer({ resolveWithObject: true });
  } catch {
    return null;
  }
};

/** Whole or not at all, whoever else writes the same. */
const put = async (file: string, data: Uint8Array): Promise<void> => {
  await mkdir(dirname(file), { recursive: true, mode: 0o700 });
  const half = `${file}.${process.pid}.${Date.now()}`;
  await writeFile(half, data, { mode: 0o600 });
  await rename(half, file);
};

/** The bytes of one; null when the data folder has lost it. */
export const readPhotograph = async (path: string, size: PhotographSize): Promise<Uint8Array | null> => {
  try {
    return await readFile(fileOf(path, size));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return null;
    throw error;
  }
};

export const removePhotograph = async (path: string): Promise<void> => {
  for (const size of ["whole", "small"] as const) await rm(fileOf(path, size), { force: true });
};
