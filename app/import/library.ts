import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Construction } from "#lib/constructions/construction";
import { stagingName } from "#lib/staging/fileNames";

const FOLDER = "seed/constructions";

/**
 * The files of an upload with the constructions it does not bring: those the company keeps, as it keeps them, then those that come
 * with the program. A file counts as the same when its name is.
 */
export const withConstructions = async (
  files: ReadonlyMap<string, string>,
  kept: readonly Construction[],
): Promise<ReadonlyMap<string, string>> => {
  const given = new Set([...files.keys()].map(stagingName));
  const own = kept
    .map((construction) => [`constructions/${construction.code}.json`, JSON.stringify(construction)] as const)
    .filter(([name]) => !given.has(name));
  const known = new Set([...given, ...own.map(([name]) => name)]);
  const folder = join(process.cwd(), FOLDER);
  const names = (await readdir(folder)).filter((name) => name.endsWith(".json") && !known.has(stagingName(name))).sort();
  const library = await Promise.all(names.map(async (name) => [name, await readFile(join(folder, name), "utf8")] as const));
  return new Map([...files, ...own, ...library]);
};
