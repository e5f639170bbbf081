import { createHash } from "node:crypto";
import { readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { root } from "./folders.mjs";

/** Hash of the contents of files and folders of the project; `skip` leaves out paths (relative, with /). */
export async function hashOf(paths, skip = () => false) {
  const hash = createHash("sha256");
  for (const path of paths) await add(hash, path, skip);
  return hash.digest("hex");
}

async function add(hash, path, skip) {
  if (skip(path)) return;
  const entries = await readdir(join(root, path), { withFileTypes: true }).catch((error) => {
    if (error.code === "ENOTDIR") return null;
    if (error.code === "ENOENT") return [];
    throw error;
  });
  if (!entries) {
    hash.update(`${path}\0`).update(await readFile(join(root, path)));
    return;
  }
  const names = entries.map((entry) => entry.name).sort();
  for (const name of names) await add(hash, `${path}/${name}`, skip);
}

/**
 * Does the work only when the stamp it left last time differs. The stamp lies inside what the work makes,
 * so that it vanishes with it.
 * @returns whether the work was done
 */
export async function unlessStamped(stampFile, hash, work) {
  const last = await readFile(stampFile, "utf8").catch(() => null);
  if (last === hash) return false;
  await work();
  await writeFile(stampFile, hash);
  return true;
}
