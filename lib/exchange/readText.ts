import { failed, ok, type Result } from "#lib/result";
import type { Fault } from "./fault";

/** Bytes of a text file as UTF-8 (or UTF-16 with its mark); other encodings would turn names into noise and are refused. */
export const readText = (file: string, bytes: Uint8Array): Result<string, Fault> => {
  const wide = bytes[0] === 0xff && bytes[1] === 0xfe;
  try {
    return ok(new TextDecoder(wide ? "utf-16le" : "utf-8", { fatal: true }).decode(bytes));
  } catch {
    return failed({ file, row: null, column: null, problem: "The file is not UTF-8 text.", mend: "Save it again as CSV UTF-8." });
  }
};
