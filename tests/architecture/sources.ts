import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";

export interface Source {
  readonly path: string;
  readonly text: string;
  readonly lines: number;
}

/** Every file of the project, kept or about to be: what git would keep. */
export const files: readonly string[] = execFileSync("git", ["ls-files", "--cached", "--others", "--exclude-standard"], {
  encoding: "utf8",
})
  .split("\n")
  .filter((path) => path && existsSync(path));

/** Files a person writes and reads as text, with their contents. */
export const texts: readonly Source[] = files
  .filter(
    (path) => /\.(ts|tsx|mjs|css|prisma|sql|json|md|csv|yml|yaml|toml)$|Dockerfile$|^\.ci\/run$/.test(path) && path !== "package-lock.json",
  )
  .map((path) => {
    const text = readFileSync(path, "utf8");
    return { path, text, lines: text.split("\n").length - 1 };
  });

/** Program text, tests included. */
export const sources: readonly Source[] = texts.filter(({ path }) => /\.(ts|tsx|mjs)$/.test(path));
