import { join } from "node:path";
import { Complaint } from "./complaint.mjs";
import { bundles } from "./folders.mjs";
import { openPostgres } from "./postgres/openPostgres.mjs";
import { capture } from "./run.mjs";

/** The database the app uses: the server named by DATABASE_URL, or one of our own. @returns { url, own, stop } */
export async function openDatabase({ databaseUrl, data, signal, durable }) {
  if (databaseUrl) return { url: databaseUrl, own: false, stop: async () => {} };
  return { ...(await openPostgres(join(data, "postgres"), { signal, durable })), own: true };
}

/** Brings tables up to date and loads the demonstration once. @returns { migrations, loaded, users } */
export async function prepareDatabase({ url, own }, { empty, env = process.env, signal }) {
  const args = ["--enable-source-maps", join(bundles, "prepareDatabase.mjs"), ...(own ? ["--create"] : []), ...(empty ? ["--empty"] : [])];
  const { code, stdout, stderr } = await capture(process.execPath, args, { env: { ...env, DATABASE_URL: url }, signal });
  if (code === 3) throw new Complaint(stderr.trim());
  if (code !== 0) throw new Error(`The database could not be prepared:\n${stderr.trim()}`);
  return JSON.parse(stdout.trim().split("\n").at(-1));
}
