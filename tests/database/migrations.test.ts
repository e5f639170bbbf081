import { cp, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { deploy, MigrationRefused } from "#prisma/migrate/deploy";
import { MIGRATIONS_FOLDER, readMigrations } from "#prisma/migrate/files";
import { drift } from "#prisma/migrate/replay";
import { serveDatabase, sql } from "./support/serve";

const given = serveDatabase("empty");
const folders: string[] = [];
afterAll(() => Promise.all(folders.map((folder) => rm(folder, { recursive: true }))));

async function copyOfMigrations(): Promise<string> {
  const folder = await mkdtemp(path.join(tmpdir(), "migrations-"));
  folders.push(folder);
  await cp(MIGRATIONS_FOLDER, folder, { recursive: true });
  return folder;
}

describe("migrations", () => {
  it("give an empty database its tables, and do nothing the second time", async () => {
    const names = (await readMigrations()).map((migration) => migration.name);
    expect(await deploy(given.url)).toEqual(names);
    expect(await deploy(given.url)).toEqual([]);
    const kept = await sql<{ migration_name: string; checksum: string }>(
      given.url,
      "select migration_name, checksum from _prisma_migrations order by 1",
    );
    expect(kept).toEqual((await readMigrations()).map(({ name, checksum }) => ({ migration_name: name, checksum })));
  });

  it("bring the tables of the job queue", async () => {
    const found = await sql(
      given.url,
      "select 1 from pg_proc p join pg_namespace n on n.oid = p.pronamespace where nspname = 'graphile_worker' and proname = 'add_job'",
    );
    expect(found.length).toBe(1);
  });

  it("are applied once by two programs that start together", async () => {
    const name = `${new URL(given.url).pathname.slice(1)}_twice`;
    await sql(given.url, `create database ${name}`);
    const url = new URL(given.url);
    url.pathname = `/${name}`;
    const [one, other] = await Promise.all([deploy(url.href), deploy(url.href)]);
    expect([...one, ...other].sort()).toEqual((await readMigrations()).map((migration) => migration.name));
    await sql(given.url, `drop database ${name} with (force)`);
  });

  it("are refused when one was changed after it was applied", async () => {
    const folder = await copyOfMigrations();
    const [first] = await readMigrations();
    await writeFile(path.join(folder, first.name, "migration.sql"), `${first.sql}\n-- one more line\n`);
    await expect(deploy(given.url, folder)).rejects.toThrow(MigrationRefused);
    await expect(deploy(given.url, folder)).rejects.toThrow(`${first.name} was changed`);
  });

  it("are refused when the database is newer than the program", async () => {
    const folder = await copyOfMigrations();
    const last = (await readMigrations()).at(-1);
    await rm(path.join(folder, last?.name ?? ""), { recursive: true });
    await expect(deploy(given.url, folder)).rejects.toThrow(`migration ${last?.name}, which this version does not know`);
  });

  it("that fail leave nothing behind", async () => {
    const folder = await copyOfMigrations();
    await cp(path.join(folder, "0001_the_model"), path.join(folder, "9999_broken"), { recursive: true });
    await writeFile(path.join(folder, "9999_broken", "migration.sql"), "create table half (id int); select 1 / 0;");
    await expect(deploy(given.url, folder)).rejects.toThrow("division by zero");
    expect(await sql(given.url, "select 1 from pg_tables where tablename = 'half'")).toEqual([]);
    expect(await deploy(given.url)).toEqual([]);
  });

  it("give exactly the schema of the schema files", async () => {
    expect(await drift(given.url)).toBeNull();
  });

  it("that fall short of the schema files are found out", async () => {
    const { difference } = await import("#prisma/migrate/engine");
    await sql(given.url, `alter table "note" drop column "text" cascade`);
    expect(await difference(given.url)).toContain(`ALTER TABLE "note" ADD COLUMN     "text" TEXT NOT NULL`);
  });
});
