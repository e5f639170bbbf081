import { spawn } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { createServer, type Server } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

let data = "";
let busy: Server;

beforeAll(async () => {
  data = await mkdtemp(join(tmpdir(), "tarlatan-start-"));
  busy = createServer();
  await new Promise<void>((done) => busy.listen(0, "127.0.0.1", done));
});

afterAll(async () => {
  busy.close();
  await rm(data, { recursive: true, force: true });
});

/** A port nothing will be started on: each of these starts ends before. */
const port = "39217";

function start(env: Record<string, string>, words: string[] = []): Promise<{ code: number | null; complaint: string[] }> {
  return new Promise((done) => {
    const child = spawn(process.execPath, ["app/_start/start.mjs", ...words], {
      env: { ...process.env, PORT: port, TARLATAN_DATA: data, ...env },
    });
    let said = "";
    child.stderr.on("data", (chunk) => {
      said += chunk;
    });
    child.on("close", (code) => done({ code, complaint: said.trim().split("\n") }));
  });
}

describe("a start that cannot be", () => {
  it("says in one line that the port is in use", async () => {
    const address = busy.address();
    const taken = String(typeof address === "object" && address ? address.port : 0);
    const { code, complaint } = await start({ PORT: taken });
    expect(code).toBe(1);
    expect(complaint).toEqual([expect.stringContaining(`Port ${taken} is in use`)]);
  });

  it.each([
    ["a word that is no port", { PORT: "http" }, "PORT=http is not a port"],
    ["an address that is no PostgreSQL", { DATABASE_URL: "mysql://a/b" }, "not an address of PostgreSQL"],
    ["a server that is not there", { DATABASE_URL: "postgresql://a:b@127.0.0.1:1/c" }, "No database server answers at 127.0.0.1:1"],
  ])("says in one line what is wrong with %s", async (_, env, sentence) => {
    const { code, complaint } = await start(env);
    expect(code).toBe(1);
    expect(complaint).toEqual([expect.stringContaining(sentence)]);
  });

  it("never shows the password of a database it may not enter, nor makes one it was not asked to", async () => {
    const right = new URL(process.env.DATABASE_URL ?? "");
    const wrong = new URL(right);
    wrong.password = "secret-word";
    const refused = await start({ DATABASE_URL: wrong.href });
    expect(refused.complaint).toEqual([expect.stringContaining("user or password in DATABASE_URL is wrong")]);
    expect(refused.complaint.join()).not.toContain("secret-word");
    right.pathname = "/no_such_database";
    const missing = await start({ DATABASE_URL: right.href });
    expect(missing.complaint).toEqual([expect.stringContaining("no database named no_such_database")]);
  });

  it("does not take an unknown word for an empty wish", async () => {
    const { code, complaint } = await start({}, ["--emtpy"]);
    expect([code, complaint.length]).toEqual([1, 1]);
  });
});
