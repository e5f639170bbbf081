import { readdir, readFile } from "node:fs/promises";
import path from "node:path";

/** The files of a seed staging with the library of constructions, by the names a user would import them under. */
export async function seedFiles(staging: string, seed: string = path.join(process.cwd(), "seed")): Promise<ReadonlyMap<string, string>> {
  const tables = await named(path.join(seed, staging), ".csv", "");
  const constructions = await named(path.join(seed, "constructions"), ".json", "constructions/");
  return new Map([...tables, ...constructions]);
}

async function named(folder: string, ending: string, prefix: string): Promise<[string, string][]> {
  const names = (await readdir(folder)).filter((name) => name.endsWith(ending)).sort();
  return Promise.all(
    names.map(async (name): Promise<[string, string]> => [prefix + name, await readFile(path.join(folder, name), "utf8")]),
  );
}
