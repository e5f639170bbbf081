import type { PlainDate } from "#lib/calendar/plainDate";
import { faultText } from "#lib/exchange/fault";
import { readStaging } from "#lib/staging/readStaging";
import { shiftDates } from "#lib/staging/shiftDates";
import type { Staging } from "#lib/staging/staging";
import { authorizeCompany } from "../authorized";
import { openDatabase, type Transaction } from "../client";
import { createUser } from "../people/users";
import { startRunIn } from "../plans/runs";
import { saveStagingIn } from "../stagings/save";
import { seedFiles } from "./files";
import { demonstrationUsers } from "./users";

export interface DemonstrationOptions {
  /** The production begins on the Monday on or after it; today when not given. */
  readonly today?: PlainDate;
  /** Folder under seed/. */
  readonly staging?: string;
}

export interface Demonstration {
  readonly loaded: boolean;
  /** With their passwords, which are kept nowhere: print them once. Empty when nothing was loaded. */
  readonly users: readonly { readonly email: string; readonly password: string; readonly role: string }[];
}

const NOTHING: Demonstration = { loaded: false, users: [] };

/** The demonstration is levelled by the first job process that comes. */
const FIRST_SEARCH = { seed: 1, rounds: 50 };

/** Puts an invented company with one production into a database that has no company; leaves any other as it is. All or nothing. */
export async function loadDemonstration(databaseUrl: string, options: DemonstrationOptions = {}): Promise<Demonstration> {
  const client = openDatabase(databaseUrl);
  try {
    if (await anyCompany(client)) return NOTHING;
    const read = readStaging(await seedFiles(options.staging ?? "small"));
    if (!read.ok) throw new Error(`The demonstration cannot be read.\n${read.error.map(faultText).join("\n")}`);
    const staging = shiftDates(read.value, options.today ?? today());
    return await client.$transaction((tx) => found(tx, staging), { timeout: 60_000 });
  } finally {
    await client.$disconnect();
  }
}

const anyCompany = async (tx: Transaction): Promise<boolean> => (await tx.company.findFirst({ select: { id: true } })) !== null;

async function found(tx: Transaction, staging: Staging): Promise<Demonstration> {
  // Two programs that start together: the second waits here, and finds the company of the first.
  await tx.$executeRaw`lock table company in share row exclusive mode`;
  if (await anyCompany(tx)) return NOTHING;
  const { id } = await tx.company.create({ data: { code: "demonstration", name: "Lantern Street Ballet" } });
  const users = demonstrationUsers();
  for (const user of users) await createUser(tx, id, user);
  const saved = await saveStagingIn(tx, authorizeCompany(id), null, staging);
  if (!saved.ok) throw new Error(saved.error.map(faultText).join("\n"));
  await startRunIn(tx, authorizeCompany(id), { productionCode: staging.production.code, user: null, ...FIRST_SEARCH });
  return { loaded: true, users: users.map(({ email, password, role }) => ({ email, password, role })) };
}

/** The machine's own day. */
const today = (): PlainDate => {
  const now = new Date();
  const padded = (value: number) => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${padded(now.getMonth() + 1)}-${padded(now.getDate())}` as PlainDate;
};
