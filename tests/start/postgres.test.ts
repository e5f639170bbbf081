import { mkdtemp, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Client } from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openPostgres } from "../../app/_start/postgres/openPostgres.mjs";

/** One for all these tests: making it takes longest. */
let folder = "";
const opened = new Map<number, () => Promise<void>>();

const open = async () => {
  const server = await openPostgres(folder);
  opened.set(server.pid, server.stop);
  return server;
};

/** Asks the database that every server has. */
async function ask(url: string, sql: string): Promise<unknown[]> {
  const client = new Client({ connectionString: url.replace(/[^/]*$/, "postgres") });
  await client.connect();
  const { rows } = await client.query({ text: sql, rowMode: "array" });
  await client.end();
  return rows.flat();
}

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "tarlatan-postgres-"));
});

afterAll(async () => {
  for (const stop of opened.values()) await stop();
  await rm(folder, { recursive: true, force: true });
});

describe("the database of our own", () => {
  it("keeps what was committed when server and start are both killed", async () => {
    const first = await open();
    await ask(first.url, "create table kept as select 7 as number");
    process.kill(first.pid, "SIGKILL");
    const second = await open();
    expect(await ask(second.url, "select number from kept")).toEqual([7]);
  });

  it("is used again when a killed start left it running, never started twice on one folder", async () => {
    const first = await open();
    const second = await open();
    expect(second.pid).toBe(first.pid);
    expect(second.url).toBe(first.url);
  });

  it("starts although another program has been given the number in its lock file since", async () => {
    const first = await open();
    await first.stop();
    await writeFile(
      join(folder, "data/postmaster.pid"),
      `${process.pid}\n${folder}/data\n0\n${new URL(first.url).port}\n\n127.0.0.1\n0\nready\n`,
    );
    const second = await open();
    expect(await ask(second.url, "select 1")).toEqual([1]);
  });

  it("listens on this machine only, with a password only its owner can read", async () => {
    const { url } = await open();
    expect(await ask(url, "select current_setting('listen_addresses')")).toEqual(["127.0.0.1"]);
    expect(await ask(url, "select current_setting('unix_socket_directories')")).toEqual([""]);
    expect((await stat(join(folder, "password"))).mode & 0o777).toBe(0o600);
    const stranger = new URL(url);
    stranger.password = "guessed";
    await expect(ask(stranger.href, "select 1")).rejects.toThrow("password authentication failed");
  });

  it("holds text as UTF-8, sorted the same on every machine", async () => {
    const { url } = await open();
    expect(
      await ask(url, "select datlocprovider::text, datlocale, pg_encoding_to_char(encoding) from pg_database where datname = 'postgres'"),
    ).toEqual(["b", "C.UTF-8", "UTF8"]);
  });
});
