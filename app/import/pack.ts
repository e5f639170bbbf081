import { strToU8, zipSync } from "fflate";
import type { Fault } from "#lib/exchange/fault";
import { readZip } from "#lib/exchange/readZip";
import type { Result } from "#lib/result";

/**
 * The files of an upload as one string that a form carries from the preview to the confirmation. Nothing is kept on the server between
 * the two; what comes back is judged again from the start.
 */
export const pack = (files: ReadonlyMap<string, string>): string => {
  const entries = Object.fromEntries([...files].map(([name, text]) => [name, strToU8(text)]));
  return Buffer.from(zipSync(entries, { mtime: "1980-01-01" })).toString("base64");
};

export const unpack = (packed: string): Result<ReadonlyMap<string, string>, readonly Fault[]> =>
  readZip("upload", Buffer.from(packed, "base64"));
