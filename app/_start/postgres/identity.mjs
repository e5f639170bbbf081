import { spawnSync } from "node:child_process";

const nobody = 65534;
const unshare = ["unshare", "--user", "--map-user=1000", "--map-group=1000"];
const setpriv = [
  "setpriv",
  `--reuid=${nobody}`,
  `--regid=${nobody}`,
  "--clear-groups",
  "--securebits=+no_setuid_fixup",
  "--inh-caps=+dac_override",
  "--ambient-caps=+dac_override",
];

/**
 * As whom PostgreSQL is run: it refuses to be root. For root the first of these that works: root seen as an ordinary user in a
 * namespace of its own; nobody who may still enter root's folders; plain nobody.
 * @returns `prefix` words before the command, `ids` for spawn, and the user that must own the data (null: the one who runs this)
 */
export function postgresIdentity(postgres) {
  if (process.getuid?.() !== 0) return { prefix: [], ids: {}, owner: null };
  const works = (prefix) => spawnSync(prefix[0], [...prefix.slice(1), postgres, "--version"], { timeout: 10_000 }).status === 0;
  if (works(unshare)) return { prefix: unshare, ids: {}, owner: 0 };
  if (works(setpriv)) return { prefix: setpriv, ids: {}, owner: nobody };
  return { prefix: [], ids: { uid: nobody, gid: nobody }, owner: nobody };
}
