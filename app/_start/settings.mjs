import { Complaint } from "./complaint.mjs";
import { dataFolder } from "./folders.mjs";

/** What the person chose, by environment and by words after `--`. @throws Complaint */
export function readSettings(env, args) {
  const unknown = args.find((arg) => !["--empty", "--dev"].includes(arg));
  if (unknown)
    throw new Complaint(
      `"${unknown}" is not known. One may say: npm start -- --empty (no demonstration), --dev (pages are rebuilt as they are edited).`,
    );
  const port = Number(env.PORT || 3000);
  if (!Number.isInteger(port) || port < 1 || port > 65535)
    throw new Complaint(`PORT=${env.PORT} is not a port: it is a whole number from 1 to 65535.`);
  return {
    port,
    host: env.HOST || "127.0.0.1",
    data: dataFolder(env),
    databaseUrl: env.DATABASE_URL || null,
    empty: args.includes("--empty"),
    dev: args.includes("--dev"),
  };
}
