import type { Change } from "#lib/staging/change";

/** What an import would do, before it does it. */
export interface Preview {
  readonly code: string;
  readonly title: string;
  readonly changes: readonly Change[];
  /** Revision of the production the changes are against; null when it is new. */
  readonly revision: number | null;
  /** The files, to be sent again with the confirmation. */
  readonly packed: string;
}
