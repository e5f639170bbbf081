import { PrismaPg } from "@prisma/adapter-pg";
import { Prisma, PrismaClient } from "./generated/client";

export type Database = PrismaClient;
/** The client inside a transaction. */
export type Transaction = Parameters<Parameters<PrismaClient["$transaction"]>[0]>[0];

/** A client of one's own, to be disconnected after use. */
export const openDatabase = (url: string): Database => new PrismaClient({ adapter: new PrismaPg({ connectionString: url }) });

/** Every table with its columns: tells a client from one that was generated before the schema changed. */
const SHAPE = JSON.stringify(Object.entries(Prisma).filter(([name]) => name.endsWith("ScalarFieldEnum")));

interface Kept {
  readonly url: string;
  readonly shape: string;
  readonly client: PrismaClient;
}

/** On globalThis, since a development server loads this file again and again. */
const kept = globalThis as typeof globalThis & { tarlatanDatabase?: Kept };

/** The one client of this process, for DATABASE_URL. */
export function database(): Database {
  const url = process.env.DATABASE_URL;
  if (!url) throw new Error("DATABASE_URL is not set.");
  if (kept.tarlatanDatabase?.url !== url || kept.tarlatanDatabase.shape !== SHAPE) {
    kept.tarlatanDatabase = { url, shape: SHAPE, client: openDatabase(url) };
  }
  return kept.tarlatanDatabase.client;
}

/** Closes the client, so that a command may end. */
export async function closeDatabase(): Promise<void> {
  const open = kept.tarlatanDatabase;
  kept.tarlatanDatabase = undefined;
  await open?.client.$disconnect();
}
