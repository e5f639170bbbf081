import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { stagingName } from "#lib/staging/fileNames";

/** The files with the constructions that come with the program, each of which gives way to a file of the same name. */
export const withLibrary = async (files: ReadonlyMap<string, string>): Promise<ReadonlyMap<string, string>> => {
  const folder = join(process.cwd(), "seed/constructions");
  const given = new Set([...files.keys()].map(stagingName));
  const names = (await readdir(folder)).filter((name) => name.endsWith(".json") && !given.has(stagingName(name))).sort();
  const library = await Promise.all(names.map(async (name) => [name, await readFile(join(folder, name), "utf8")] as const));
  return new Map([...files, ...library]);
};
