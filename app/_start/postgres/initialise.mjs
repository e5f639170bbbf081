import { randomBytes } from "node:crypto";
import { chown, lstat, mkdir, readdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { mustRun } from "../run.mjs";

/**
 * Makes the data folder of a database, once. It is made beside its place and then moved, so that an interrupted start leaves nothing half done.
 * @returns the password of its only user
 */
export async function initialise(folder, { initdb }, { prefix, ids, owner }, signal) {
  const data = join(folder, "data");
  const passwordFile = join(folder, "password");
  const password = await readFile(passwordFile, "utf8").catch(() => null);
  if (password && (await exists(join(data, "PG_VERSION")))) {
    await giveTo(owner, data);
    return password;
  }
  if (await exists(data)) throw new Error(`${data} has no password beside it (${passwordFile}): it was not made here.`);
  await mkdir(folder, { recursive: true, mode: 0o711 });
  const fresh = password ?? randomBytes(24).toString("base64url");
  if (!password) await writeFile(passwordFile, fresh, { mode: 0o600 });
  const scratch = join(folder, "data.new");
  await rm(scratch, { recursive: true, force: true });
  await mkdir(scratch, { mode: 0o700 });
  // Outside the folder, which must be empty; gone as soon as it has been read.
  const copy = join(folder, "password.new");
  await writeFile(copy, fresh, { mode: 0o600 });
  try {
    await giveTo(owner, scratch);
    await giveTo(owner, copy);
    const [command, ...args] = [...prefix, initdb, "-D", scratch, "-U", "tarlatan", "--auth=scram-sha-256", `--pwfile=${copy}`, ...locale];
    await mustRun("Making the database", command, args, { env: { ...process.env, LC_ALL: "C" }, ids, signal });
  } catch (error) {
    await rm(scratch, { recursive: true, force: true });
    throw error;
  } finally {
    await rm(copy, { force: true });
  }
  await rename(scratch, data);
  return fresh;
}

const locale = ["--locale-provider=builtin", "--locale=C.UTF-8", "-E", "UTF8", "--no-instructions"];

/** Gives files to the user PostgreSQL runs as, when they are another's (null: leave them). */
async function giveTo(owner, path) {
  if (owner === null) return;
  const state = await lstat(path);
  if (state.uid === owner) return;
  await chown(path, owner, owner);
  if (!state.isDirectory()) return;
  for (const name of await readdir(path)) await giveTo(owner, join(path, name));
}

const exists = (path) =>
  lstat(path).then(
    () => true,
    () => false,
  );
