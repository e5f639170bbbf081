import { readFile } from "node:fs/promises";
import { join } from "node:path";

/**
 * What a running server says of itself in its own file.
 * @returns { pid, port, ready }, or null when there is no file or its process is gone
 */
export async function readPostmaster(data) {
  const text = await readFile(join(data, "postmaster.pid"), "utf8").catch(() => null);
  if (!text) return null;
  const lines = text.split("\n");
  const pid = Number(lines[0]);
  if (!(pid > 0) || !isAlive(pid) || !(await isPostgres(pid))) return null;
  return { pid, port: Number(lines[3]), ready: (lines[7] ?? "").trim() === "ready" };
}

export function isAlive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error.code === "EPERM";
  }
}

/** A process number may have been given to another program since (a machine that was started anew): where it can be seen, look. */
async function isPostgres(pid) {
  const command = await readFile(`/proc/${pid}/cmdline`, "utf8").catch(() => null);
  return command === null ? process.platform !== "linux" : command.includes("postgres");
}

/** Fast shutdown: open transactions are rolled back, everything committed is on disk. Killed only if that takes over 30 s. */
export async function stopPostmaster(pid) {
  for (const [name, patience] of [
    ["SIGINT", 30_000],
    ["SIGKILL", 5_000],
  ]) {
    if (!isAlive(pid)) return;
    process.kill(pid, name);
    const until = Date.now() + patience;
    while (isAlive(pid) && Date.now() < until) await pause(25);
  }
}

export const pause = (milliseconds) => new Promise((done) => setTimeout(done, milliseconds));
