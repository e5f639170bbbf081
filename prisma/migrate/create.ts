import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { MIGRATIONS_FOLDER, readMigrations } from "./files";
import { drift } from "./replay";
import { databaseUrlOrExit } from "./scratch";

const words = process.argv[2];
if (!words || !/^[a-z0-9_]+$/.test(words)) {
  console.error("Usage: tsx prisma/migrate/create.ts NAME   (small letters, digits and _), for example: costume_notes");
  process.exit(2);
}

const missing = await drift(databaseUrlOrExit());
if (missing === null) {
  console.error("Nothing to do: the migrations already give the schema.");
} else {
  const number = String((await readMigrations()).length + 1).padStart(4, "0");
  const folder = path.join(MIGRATIONS_FOLDER, `${number}_${words}`);
  await mkdir(folder);
  await writeFile(path.join(folder, "migration.sql"), missing);
  console.log(path.relative(process.cwd(), folder));
}
