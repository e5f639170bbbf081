/**
 * Makes the database fit for use: tables, the queue of jobs, and once the demonstration. Run by the start, before the app.
 *
 *   DATABASE_URL=... node .build/prepareDatabase.mjs [--create] [--empty]
 *
 * --create makes the database when the server has none of that name; --empty leaves the demonstration out.
 * Prints one line of JSON. Exit code 3 and one line on stderr: the server cannot be used.
 */
import { Client } from "pg";
import { loadDemonstration } from "#prisma/demonstration/load";
import { deploy, MigrationRefused } from "#prisma/migrate/deploy";
import { databaseTrouble } from "./databaseTrouble";

const url = process.env.DATABASE_URL ?? "";
const flags = new Set(process.argv.slice(2));

try {
  if (databaseTrouble(null, url)) throw null;
  await (flags.has("--create") ? createIfMissing() : check());
  const migrations = await deploy(url);
  const { loaded, users } = flags.has("--empty") ? { loaded: false, users: [] } : await loadDemonstration(url);
  console.log(JSON.stringify({ migrations, loaded, users }));
} catch (error) {
  const trouble = error instanceof MigrationRefused ? error.message : databaseTrouble(error, url);
  if (!trouble) throw error;
  console.error(trouble);
  process.exit(3);
}

async function check(): Promise<void> {
  const client = new Client({ connectionString: url, connectionTimeoutMillis: 10_000 });
  await client.connect();
  await client.end();
}

async function createIfMissing(): Promise<void> {
  const other = new URL(url);
  const name = decodeURIComponent(other.pathname.slice(1));
  other.pathname = "/postgres";
  const client = new Client({ connectionString: other.href });
  await client.connect();
  const { rowCount } = await client.query("select 1 from pg_database where datname = $1", [name]);
  if (!rowCount) await client.query(`create database ${client.escapeIdentifier(name)}`);
  await client.end();
}
