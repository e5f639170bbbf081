import { versionFile } from "#lib/constructions/versions";
import { writeCsv } from "#lib/exchange/writeCsv";
import { fromStaging } from "./fromStaging";
import type { Staging } from "./staging";

/** The files of a staging by name, as a person may edit them and `readStaging` reads them back to the same staging. */
export const writeStaging = (staging: Staging): ReadonlyMap<string, string> =>
  new Map([
    ...fromStaging(staging).map(({ file, headings, rows }) => [file, writeCsv(headings, rows)] as const),
    ...staging.constructions.map(
      (construction) => [versionFile(staging.constructions, construction), `${JSON.stringify(construction, null, 2)}\n`] as const,
    ),
  ]);
