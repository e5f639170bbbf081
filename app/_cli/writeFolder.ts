import { access, mkdir, rename, rm, writeFile } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";

/** Writes all files or none: into a folder beside it first, moved into place, in their order, when every one of them is complete. */
export const writeFolder = async (folder: string, files: ReadonlyMap<string, string>): Promise<void> => {
  const target = resolve(folder);
  await mkdir(dirname(target), { recursive: true });
  const beside = join(dirname(target), `.${basename(target)}-${process.pid}`);
  await mkdir(beside);
  try {
    for (const [name, text] of files) {
      await mkdir(dirname(join(beside, name)), { recursive: true });
      await writeFile(join(beside, name), text);
    }
    if (await exists(target))
      for (const name of files.keys()) {
        await mkdir(dirname(join(target, name)), { recursive: true });
        await rename(join(beside, name), join(target, name));
      }
    else await rename(beside, target);
  } finally {
    await rm(beside, { recursive: true, force: true });
  }
};

const exists = (path: string): Promise<boolean> =>
  access(path).then(
    () => true,
    () => false,
  );
