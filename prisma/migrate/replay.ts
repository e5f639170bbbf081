import { deploy } from "./deploy";
import { difference } from "./engine";
import { withScratchDatabase } from "./scratch";

/** SQL by which the migrations, replayed into an empty database, still differ from the schema files; null when they agree. */
export const drift = (databaseUrl: string): Promise<string | null> =>
  withScratchDatabase(databaseUrl, async (scratchUrl) => {
    await deploy(scratchUrl);
    return difference(scratchUrl);
  });
