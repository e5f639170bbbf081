import type { Fault } from "#lib/exchange/fault";
import { MOST_BYTES, MOST_FILES } from "#lib/exchange/limits";
import { readText } from "#lib/exchange/readText";
import { readZip } from "#lib/exchange/readZip";
import { failed, ok, type Result } from "#lib/result";

/** A file as a browser sends it. */
export interface Sent {
  readonly name: string;
  readonly size: number;
  readonly arrayBuffer: () => Promise<ArrayBuffer>;
}

const whole = (file: string, problem: string, mend: string): Fault => ({ file, row: null, column: null, problem, mend });

/** The texts of the files sent, zips unpacked, by name. What is too much is refused before it is read. */
export const readUpload = async (sent: readonly Sent[]): Promise<Result<ReadonlyMap<string, string>, readonly Fault[]>> => {
  const files = sent.filter((file) => file.name !== "" && file.size > 0);
  if (files.length === 0) return failed([whole("upload", "No file was chosen.", "Choose the CSV files of a staging, or one zip of them.")]);
  if (files.length > MOST_FILES)
    return failed([whole("upload", `There are more than ${MOST_FILES} files.`, "Choose only the files of the staging.")]);
  const bytes = files.reduce((sum, file) => sum + file.size, 0);
  if (bytes > MOST_BYTES)
    return failed([whole("upload", "The files together are larger than 10 MB.", "Take out what is not part of the staging.")]);
  const texts = new Map<string, string>();
  const faults: Fault[] = [];
  const add = (name: string, text: string): void => {
    if (texts.has(name)) faults.push(whole(name, "The file comes twice.", "Keep one of them."));
    texts.set(name, text);
  };
  for (const file of files) {
    const content = new Uint8Array(await file.arrayBuffer());
    if (/\.zip$/i.test(file.name)) {
      const unpacked = readZip(file.name, content);
      if (unpacked.ok) for (const [name, text] of unpacked.value) add(name, text);
      else faults.push(...unpacked.error);
    } else {
      const text = readText(file.name, content);
      if (text.ok) add(file.name, text.value);
      else faults.push(text.error);
    }
  }
  return faults.length > 0 ? failed(faults) : ok(texts);
};
