import { createHash } from "node:crypto";
import { readdir, readFile } from "node:fs/promises";
import path from "node:path";

/** Run from the project's folder, as every command of it is: a bundled copy of this file has no place of its own. */
const FOLDER = path.join(process.cwd(), "prisma");

export const MIGRATIONS_FOLDER = path.join(FOLDER, "migrations");

export interface Migration {
  readonly name: string;
  readonly sql: string;
  /** sha256 of the script in hexadecimal, as Prisma counts it. */
  readonly checksum: string;
}

/** Migrations in the order of their names. */
export async function readMigrations(folder: string = MIGRATIONS_FOLDER): Promise<readonly Migration[]> {
  const entries = await readdir(folder, { withFileTypes: true });
  const names = entries.filter((entry) => entry.isDirectory()).map((entry) => entry.name);
  return Promise.all(
    names.sort().map(async (name) => {
      const sql = await readFile(path.join(folder, name, "migration.sql"), "utf8");
      return { name, sql, checksum: createHash("sha256").update(sql).digest("hex") };
    }),
  );
}

/** The files of the schema, as the schema engine takes them. */
export async function readSchema(): Promise<{ files: { path: string; content: string }[] }> {
  const folder = path.join(FOLDER, "schema");
  const names = (await readdir(folder)).filter((name) => name.endsWith(".prisma")).sort();
  const files = names.map(async (name) => ({ path: path.join(folder, name), content: await readFile(path.join(folder, name), "utf8") }));
  return { files: await Promise.all(files) };
}
