import { join } from "node:path";
import { root } from "./folders.mjs";
import { mustRun } from "./run.mjs";
import { hashOf, unlessStamped } from "./stamps.mjs";

/** Installs the packages of the lock file, when it is not the one installed last. Development packages too: the build needs them. */
export async function install(signal) {
  const hash = await hashOf(["package-lock.json", "package.json"]);
  return unlessStamped(join(root, "node_modules/.tarlatan-stamp"), hash, () => {
    const cli = process.env.npm_execpath;
    const [command, first] = cli?.endsWith("npm-cli.js") ? [process.execPath, [cli]] : ["npm", []];
    return mustRun("Installing packages", command, [...first, "ci", "--include=dev"], { signal });
  });
}
