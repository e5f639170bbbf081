import { readdir, readFile, stat } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Fault } from "#lib/exchange/fault";
import { MOST_BYTES } from "#lib/exchange/limits";
import { readText } from "#lib/exchange/readText";
import { failed, type Result } from "#lib/result";
import { readStaging } from "#lib/staging/readStaging";
import type { Staging } from "#lib/staging/staging";

/** The constructions that come with Tarlatan; a staging's own of the same file name takes their place. */
const LIBRARY = fileURLToPath(new URL("../../seed/constructions", import.meta.url));

/** Reads a staging's folder: its tables, its own constructions, and those of the library. */
export const readFolder = async (folder: string): Promise<Result<Staging, readonly Fault[]>> => {
  const listed = await list(folder, /\.csv$/i);
  if (listed === null) return failed([{ ...WHOLE, file: folder, problem: "There is no such folder.", mend: "Look at how it is spelt." }]);
  const own = await ownConstructions(folder);
  const library = ((await list(LIBRARY, /\.json$/)) ?? []).filter((name) => !own.includes(name));
  const paths = [
    ...listed.map((name) => ({ name, path: join(folder, name) })),
    ...own.map((name) => ({ name: `constructions/${name}`, path: join(folder, "constructions", name) })),
    ...library.map((name) => ({ name: `constructions/${name}`, path: join(LIBRARY, name) })),
  ];
  const sizes = await Promise.all(paths.map(({ path }) => stat(path).then(({ size }) => size)));
  if (sizes.reduce((sum, size) => sum + size, 0) > MOST_BYTES)
    return failed([
      { ...WHOLE, file: folder, problem: "The files together are larger than 10 MB.", mend: "Take out what is not part of the staging." },
    ]);
  const texts = await Promise.all(paths.map(async ({ name, path }) => [name, readText(name, await readFile(path))] as const));
  const faults = texts.flatMap(([, text]) => (text.ok ? [] : [text.error]));
  return faults.length > 0 ? failed(faults) : readStaging(new Map(texts.flatMap(([name, text]) => (text.ok ? [[name, text.value]] : []))));
};

/** Names of the files of the folder's own constructions, sorted. */
export const ownConstructions = async (folder: string): Promise<readonly string[]> =>
  (await list(join(folder, "constructions"), /\.json$/i)) ?? [];

const WHOLE = { row: null, column: null };

/** Names of the files in a folder, sorted; null when there is no such folder. */
const list = async (folder: string, wanted: RegExp): Promise<string[] | null> => {
  try {
    const entries = await readdir(folder, { withFileTypes: true });
    return entries
      .filter((entry) => entry.isFile() && wanted.test(entry.name))
      .map(({ name }) => name)
      .sort();
  } catch (error) {
    if (["ENOENT", "ENOTDIR"].includes((error as NodeJS.ErrnoException).code ?? "")) return null;
    throw error;
  }
};
