import { randomBytes } from "node:crypto";
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";

/** The secret that signs sessions: made once, kept where only its owner may read. */
export async function authSecret(data) {
  const file = join(data, "auth-secret");
  const kept = await readFile(file, "utf8").catch(() => null);
  if (kept) return kept;
  const fresh = randomBytes(33).toString("base64url");
  await writeFile(file, fresh, { mode: 0o600 });
  return fresh;
}
