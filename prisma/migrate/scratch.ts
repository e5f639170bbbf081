import { randomUUID } from "node:crypto";
import { Client } from "pg";

/** Runs something against a new, empty database on the same server, which is dropped afterwards. */
export async function withScratchDatabase<T>(databaseUrl: string, use: (scratchUrl: string) => Promise<T>): Promise<T> {
  const name = `scratch_${randomUUID().replaceAll("-", "")}`;
  const scratch = new URL(databaseUrl);
  scratch.pathname = `/${name}`;
  const client = new Client({ connectionString: databaseUrl });
  await client.connect();
  try {
    await client.query(`create database ${name}`);
    return await use(scratch.href);
  } finally {
    await client.query(`drop database if exists ${name} with (force)`);
    await client.end();
  }
}

/** DATABASE_URL, or the end of the program with one line that says what is missing. */
export function databaseUrlOrExit(): string {
  const url = process.env.DATABASE_URL;
  if (url) return url;
  console.error("DATABASE_URL is not set. Set it to a PostgreSQL server on which a scratch database may be made.");
  process.exit(2);
}
