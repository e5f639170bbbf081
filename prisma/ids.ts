import { randomBytes } from "node:crypto";

/** A UUID of version 7 (RFC 9562): ordered by time, so that rows written together lie together in the index. */
export function newId(now: number = Date.now()): string {
  const bytes = randomBytes(16);
  bytes.writeUIntBE(now, 0, 6);
  bytes[6] = 0x70 | (bytes[6] & 0x0f);
  bytes[8] = 0x80 | (bytes[8] & 0x3f);
  const hex = bytes.toString("hex");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}

/** Id of each code. */
export type Ids = ReadonlyMap<string, string>;

/** The id of a code that the staging has been checked to have. */
export function need(ids: Ids, code: string): string {
  const id = ids.get(code);
  if (id === undefined) throw new Error(`Nothing has the code "${code}": the staging was not checked before it was saved.`);
  return id;
}

export const needOrNull = (ids: Ids, code: string | null): string | null => (code === null ? null : need(ids, code));
