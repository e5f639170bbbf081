import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { Complaint } from "./complaint.mjs";
import { isAlive } from "./postgres/postmaster.mjs";

/**
 * Claims the data folder for this process, so that two starts never share one database and one does not stop it under the other.
 * @returns a function that gives it back
 * @throws Complaint when another start has it
 */
export async function claim(data) {
  await mkdir(data, { recursive: true });
  const file = join(data, "start.pid");
  const other = Number(await readFile(file, "utf8").catch(() => ""));
  if (other && other !== process.pid && (await isStart(other))) {
    throw new Complaint(
      `Tarlatan is already running from this folder (process ${other}). Stop it first, or set TARLATAN_DATA to another folder.`,
    );
  }
  await writeFile(file, String(process.pid));
  return () => rm(file, { force: true });
}

/** A number left by a killed start may have been given to another program since: where it can be seen, look. */
async function isStart(pid) {
  if (!isAlive(pid)) return false;
  const command = await readFile(`/proc/${pid}/cmdline`, "utf8").catch(() => null);
  return command === null ? process.platform !== "linux" : /app\/_start\/\w+\.mjs/.test(command);
}
