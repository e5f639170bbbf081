import { unzipSync } from "fflate";
import { failed, ok, type Result } from "#lib/result";
import type { Fault } from "./fault";
import { MOST_BYTES, MOST_FILES } from "./limits";
import { readText } from "./readText";

/** What a zip of a staging may hold; the rest (pictures, system files) is passed over. */
const WANTED = /^(?!.*(?:__MACOSX\/|\/\.)).*\.(?:csv|json)$/i;

/**
 * Text files of a zip by their path, a common top folder taken off. Sizes are judged by what the entries declare before anything is
 * unpacked, and no entry is unpacked beyond it: a small zip cannot grow past the limit.
 */
export const readZip = (file: string, bytes: Uint8Array): Result<ReadonlyMap<string, string>, readonly Fault[]> => {
  const fault = (problem: string, mend: string): Fault => ({ file, row: null, column: null, problem, mend });
  let size = 0;
  let count = 0;
  let entries: Record<string, Uint8Array>;
  const within = () => size <= MOST_BYTES && count <= MOST_FILES;
  try {
    entries = unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        if (!WANTED.test(name)) return false;
        size += originalSize;
        count += 1;
        return within();
      },
    });
  } catch {
    return failed([fault("The file is not a zip that can be read.", "Pack the folder again.")]);
  }
  if (!within()) return failed([fault("The zip holds more than 10 MB or more than 200 files.", "Pack only the files of the staging.")]);
  const top = commonFolder(Object.keys(entries));
  const texts = Object.entries(entries).map(([name, content]) => [name.slice(top.length), readText(name, content)] as const);
  const faults = texts.flatMap(([, text]) => (text.ok ? [] : [text.error]));
  return faults.length > 0 ? failed(faults) : ok(new Map(texts.flatMap(([name, text]) => (text.ok ? [[name, text.value] as const] : []))));
};

/** `swans/` when every file lies in the folder swans and none of them is a construction's folder itself. */
const commonFolder = (names: readonly string[]): string => {
  const first = names[0] ?? "";
  const folder = first.slice(0, first.indexOf("/") + 1);
  return folder !== "" && folder !== "constructions/" && names.every((name) => name.startsWith(folder)) ? folder : "";
};
