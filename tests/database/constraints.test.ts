import { beforeAll, describe, expect, it } from "vitest";
import { everything } from "./support/everything";
import refusals from "./support/refusals.json";
import { serveDatabase, sql } from "./support/serve";

const given = serveDatabase();
beforeAll(async () => {
  await everything("one");
});

/** A person may belong to several companies, so the tables of sign-in carry none; the last is Prisma's own. */
const WITHOUT_COMPANY = ["auth_user", "auth_session", "auth_account", "auth_verification", "_prisma_migrations"];
const EXEMPT = ["company", ...WITHOUT_COMPANY];

const tables = async () =>
  (await sql<{ name: string }>(given.url, "select tablename as name from pg_tables where schemaname = 'public'")).map((row) => row.name);

interface ForeignKey {
  readonly table: string;
  readonly constraint: string;
  readonly target: string;
  readonly columns: string[];
}

const foreignKeys = () =>
  sql<ForeignKey>(
    given.url,
    `select c.conrelid::regclass::text as table, c.conname as constraint, c.confrelid::regclass::text as target,
       array(select a.attname::text from unnest(c.conkey) with ordinality k(n, at) join pg_attribute a on a.attrelid = c.conrelid
         and a.attnum = k.n order by k.at) as columns
     from pg_constraint c where c.contype = 'f' and c.connamespace = 'public'::regnamespace`,
  );

describe("every table of a company", () => {
  it("there are as many as the model says", async () => {
    expect((await tables()).length).toBeGreaterThan(50);
    expect(await tables()).toEqual(expect.arrayContaining(EXEMPT));
  });

  it("has a company that may not be empty", async () => {
    const having = await sql<{ name: string }>(
      given.url,
      `select table_name as name from information_schema.columns
       where table_schema = 'public' and column_name = 'company_id' and is_nullable = 'NO'`,
    );
    const names = having.map((row) => row.name);
    expect((await tables()).filter((name) => !EXEMPT.includes(name) && !names.includes(name))).toEqual([]);
  });

  it("is unique by company and id", async () => {
    const having = await sql<{ name: string }>(
      given.url,
      "select tablename as name from pg_indexes where schemaname = 'public' and indexdef ~ 'UNIQUE INDEX .* \\(company_id, id\\)$'",
    );
    const names = having.map((row) => row.name);
    expect((await tables()).filter((name) => !EXEMPT.includes(name) && !names.includes(name))).toEqual([]);
  });

  it("belongs to a company, itself or through what it refers to", async () => {
    const names = (await foreignKeys()).map((key) => key.table.replaceAll('"', ""));
    expect((await tables()).filter((name) => !EXEMPT.includes(name) && !names.includes(name))).toEqual([]);
  });

  it("carries its company in every reference", async () => {
    const bare = (await foreignKeys()).filter((key) => !key.columns.includes("company_id") && !WITHOUT_COMPANY.includes(key.table));
    // Who somebody is stands outside the companies: a membership is the one way in.
    expect(bare.map((key) => key.constraint)).toEqual(["membership_user_id_fkey"]);
    const single = (await foreignKeys()).filter((key) => key.columns.length === 1 && !WITHOUT_COMPANY.includes(key.table));
    expect(single.filter((key) => key.target !== "company").map((key) => key.constraint)).toEqual(["membership_user_id_fkey"]);
  });
});

describe("a check or a partial index", () => {
  it("has a row that it refuses, each of them", async () => {
    const names = await sql<{ name: string }>(
      given.url,
      `select conname::text as name from pg_constraint where contype = 'c' and connamespace = 'public'::regnamespace
       union all select indexname::text from pg_indexes where schemaname = 'public' and indexdef ~ ' WHERE '`,
    );
    expect(Object.keys(refusals).sort()).toEqual(names.map((row) => row.name).sort());
  });

  it.each(Object.entries(refusals))("%s refuses it", async (name, statement) => {
    const refused = await sql(given.url, statement).then(
      () => null,
      (error: { constraint?: string }) => error.constraint,
    );
    expect(refused).toBe(name);
  });
});

describe("a row of one company", () => {
  it("cannot refer to a row of another, by any of the references", async () => {
    const other = await everything("other");
    const kept: string[] = [];
    for (const { table, constraint, target, columns } of await foreignKeys()) {
      // By its number, a version is one of the piece's construction, and that is the company's own by its own key.
      if (constraint === "piece_company_id_construction_id_kept_version_fkey") continue;
      const reference = columns.find((column) => column !== "company_id");
      if (!columns.includes("company_id") || reference === undefined) continue;
      const theirs = `select ${target === "membership" ? "user_id" : "id"} from ${target} where company_id = '${other}' limit 1`;
      const ours = `select id from ${table} where company_id <> '${other}' order by ${reference} is null limit 1`;
      const moved = `update ${table} set ${reference} = (${theirs}) where id = (${ours}) returning id`;
      const outcome = await sql(given.url, moved).then(
        (rows) => `${rows.length} kept`,
        (error: { constraint?: string }) => error.constraint,
      );
      if (outcome !== constraint) kept.push(`${constraint}: ${outcome}`);
    }
    expect(kept).toEqual([]);
  });
});
