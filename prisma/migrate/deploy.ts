import { randomUUID } from "node:crypto";
import { Logger, runMigrations } from "graphile-worker";
import { Client } from "pg";
import { MIGRATIONS_FOLDER, type Migration, readMigrations } from "./files";

/** The lock that Prisma's own migration command takes, so that the two never run at once. */
const LOCK = 72707369;

/** Prisma's own table, so that its migration command agrees with what was done here. */
const TABLE = `
  create table if not exists _prisma_migrations (
    id varchar(36) primary key not null,
    checksum varchar(64) not null,
    finished_at timestamptz,
    migration_name varchar(255) not null,
    logs text,
    rolled_back_at timestamptz,
    started_at timestamptz not null default now(),
    applied_steps_count integer not null default 0
  )`;

/** The database and the migrations beside the program do not belong together. The message says what to do. */
export class MigrationRefused extends Error {
  override readonly name = "MigrationRefused";
}

/**
 * Brings a database up to date: applies what is missing in the order of the names, each in a transaction of its own, then the
 * tables of the job queue. Returns the names applied now.
 *
 * @throws MigrationRefused when an applied migration was changed since, or the database has one that the program lacks.
 */
export async function deploy(databaseUrl: string, folder: string = MIGRATIONS_FOLDER): Promise<readonly string[]> {
  const migrations = await readMigrations(folder);
  const client = new Client({ connectionString: databaseUrl });
  await client.connect();
  try {
    await client.query("select pg_advisory_lock($1)", [LOCK]);
    await client.query(TABLE);
    const applied = await appliedChecksums(client);
    judge(applied, migrations);
    const missing = migrations.filter((migration) => !applied.has(migration.name));
    for (const migration of missing) await apply(client, migration);
    await runMigrations({ connectionString: databaseUrl, logger: new Logger(() => () => {}) });
    return missing.map((migration) => migration.name);
  } finally {
    await client.end();
  }
}

async function appliedChecksums(client: Client): Promise<ReadonlyMap<string, string>> {
  const { rows } = await client.query<{ migration_name: string; checksum: string }>(
    "select migration_name, checksum from _prisma_migrations where finished_at is not null and rolled_back_at is null",
  );
  return new Map(rows.map((row) => [row.migration_name, row.checksum]));
}

function judge(applied: ReadonlyMap<string, string>, migrations: readonly Migration[]): void {
  const known = new Map(migrations.map((migration) => [migration.name, migration.checksum]));
  for (const [name, checksum] of applied) {
    const now = known.get(name);
    if (now === undefined) {
      throw new MigrationRefused(`The database has migration ${name}, which this version does not know. Start a version that has it.`);
    }
    if (now !== checksum) {
      throw new MigrationRefused(
        `Migration ${name} was changed after it was applied. Restore it, and make a new migration for the change.`,
      );
    }
  }
}

async function apply(client: Client, migration: Migration): Promise<void> {
  await client.query("begin");
  try {
    await client.query(migration.sql);
    await client.query(
      `insert into _prisma_migrations (id, checksum, finished_at, migration_name, applied_steps_count) values ($1, $2, now(), $3, 1)`,
      [randomUUID(), migration.checksum, migration.name],
    );
    await client.query("commit");
  } catch (error) {
    await client.query("rollback");
    throw error;
  }
}
