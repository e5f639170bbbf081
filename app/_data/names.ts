import { versionMeant } from "#lib/constructions/versions";
import type { Staging } from "#lib/staging/staging";

/** A maker's name by code; `nobody yet` for null. */
export const nameOfMaker = (staging: Staging, code: string | null): string =>
  code === null ? "nobody yet" : (staging.makers.find((maker) => maker.code === code)?.name ?? code);

/** A performer's name by code; a place that is not cast yet keeps its own words. */
export const nameOfPerformer = (staging: Staging, code: string): string =>
  staging.performers.find((performer) => performer.code === code)?.name ?? code;

export const nameOfMaterial = (staging: Staging, code: string): string =>
  staging.materials.find((material) => material.code === code)?.name ?? code;

export const nameOfRole = (staging: Staging, code: string): string => staging.roles.find((role) => role.code === code)?.name ?? code;

export const nameOfConstruction = (staging: Staging, code: string): string =>
  versionMeant(staging.constructions, code, null)?.name[staging.production.words] ?? code;
