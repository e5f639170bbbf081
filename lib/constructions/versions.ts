import type { Construction } from "./construction";

/** What tells one version from another. */
type Versioned = Pick<Construction, "code" | "version">;

/** All versions of a construction that are known, oldest first. */
export const versionsOf = <C extends Versioned>(constructions: readonly C[], code: string): readonly C[] =>
  constructions.filter((construction) => construction.code === code).sort((a, b) => a.version - b.version);

/** The version a piece is made by: the one it names, or for null the newest; undefined when that one is not known. */
export const versionMeant = <C extends Versioned>(constructions: readonly C[], code: string, version: number | null): C | undefined => {
  const known = versionsOf(constructions, code);
  return version === null ? known.at(-1) : known.find((construction) => construction.version === version);
};

/** Name of a version's file: the oldest that is kept has the plain name, so that it stands in for the library's file of that name. */
export const versionFile = (constructions: readonly Versioned[], { code, version }: Versioned): string =>
  `constructions/${code}${versionsOf(constructions, code)[0]?.version === version ? "" : `@${version}`}.json`;
