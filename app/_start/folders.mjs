import { resolve } from "node:path";
import { fileURLToPath } from "node:url";

/** The project. */
export const root = fileURLToPath(new URL("../..", import.meta.url));

/** Scripts bundled for plain Node: the job process, its levelling thread, the preparation of the database. */
export const bundles = resolve(root, ".build");

/** Where everything that a person would not want to lose is kept: TARLATAN_DATA, or an ignored folder of the project. */
export const dataFolder = (env) => resolve(root, env.TARLATAN_DATA || ".tarlatan");
