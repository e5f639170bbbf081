import { createHash, randomUUID } from "node:crypto";
import { Client } from "pg";
import { afterAll, beforeAll } from "vitest";
import { closeDatabase } from "#prisma/client";
import { deploy } from "#prisma/migrate/deploy";
import { readMigrations } from "#prisma/migrate/files";

const server = process.env.DATABASE_URL ?? "";

const at = (name: string): string => {
  const url = new URL(server);
  url.pathname = `/${name}`;
  return url.href;
};

/** Runs one statement, or several without values, against a database. */
export async function sql<T extends object>(url: string, text: string, values: readonly unknown[] = []): Promise<T[]> {
  const client = new Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query<T>(text, values.length > 0 ? [...values] : undefined)).rows;
  } finally {
    await client.end();
  }
}

/** A template per state of the migrations, made once and copied by every test file. */
async function template(): Promise<string> {
  const checksums = (await readMigrations()).map((migration) => migration.checksum).join();
  const name = `tarlatan_template_${createHash("sha256").update(checksums).digest("hex").slice(0, 12)}`;
  const there = await sql(server, "select 1 from pg_database where datname = $1", [name]);
  if (there.length === 0) {
    const making = `${name}_${randomUUID().slice(0, 8)}`;
    await sql(server, `create database ${making}`);
    await deploy(at(making));
    await sql(server, `alter database ${making} rename to ${name}`);
  }
  return name;
}

/** Gives the test file a database of its own, with the tables or empty, for as long as it runs; DATABASE_URL points at it. */
export function serveDatabase(kind: "migrated" | "empty" = "migrated"): { url: string } {
  const given = { url: "" };
  const name = `tarlatan_test_${randomUUID().replaceAll("-", "")}`;
  beforeAll(async () => {
    if (server === "") throw new Error("DATABASE_URL is not set: the database tests need a PostgreSQL server.");
    await sql(server, `create database ${name}${kind === "migrated" ? ` template ${await template()}` : ""}`);
    given.url = at(name);
    process.env.DATABASE_URL = given.url;
  });
  afterAll(async () => {
    await closeDatabase();
    process.env.DATABASE_URL = server;
    await sql(server, `drop database if exists ${name} with (force)`);
  });
  return given;
}
