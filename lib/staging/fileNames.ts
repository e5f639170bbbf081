import type { Fault } from "#lib/exchange/fault";
import { MOST_BYTES } from "#lib/exchange/limits";
import { meant } from "#lib/exchange/nearest";
import { FILES } from "./files";

const NAMES: readonly string[] = Object.values(FILES).map((file) => file.name);

/** A file under the one name it is known by: `Swans/Pieces.CSV` is `pieces.csv`, any JSON is a construction. Null: no part of a staging. */
export const stagingName = (path: string): string | null => {
  const base = path.split(/[\\/]/).at(-1) ?? "";
  if (/\.csv$/i.test(base)) return base.toLowerCase();
  return /\.json$/i.test(base) ? `constructions/${base}` : null;
};

/** Files under their known names, others left out; unknown tables, doubled names and too much of everything are faults. */
export const nameFiles = (
  files: ReadonlyMap<string, string>,
): { readonly texts: ReadonlyMap<string, string>; readonly faults: readonly Fault[] } => {
  const texts = new Map<string, string>();
  const faults: Fault[] = [];
  const fault = (file: string, problem: string, mend: string) => faults.push({ file, row: null, column: null, problem, mend });
  let size = 0;
  for (const [path, text] of files) {
    const name = stagingName(path);
    if (name === null) continue;
    size += new TextEncoder().encode(text).length;
    if (!name.startsWith("constructions/") && !NAMES.includes(name))
      fault(path, "It is not a file of a staging.", meant(name, NAMES, "Take it out."));
    else if (texts.has(name)) fault(path, `There are two files ${name}.`, "Keep one of them.");
    else texts.set(name, text);
  }
  if (size > MOST_BYTES) fault("staging", "The files together are larger than 10 MB.", "Take out what is not part of the staging.");
  return { texts, faults };
};
