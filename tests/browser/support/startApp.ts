import { spawn } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";

export interface Person {
  readonly role: string;
  readonly email: string;
  readonly password: string;
}

export interface App {
  readonly address: string;
  /** The demonstration's users, read from what the start prints: as a person would get them. */
  readonly people: readonly Person[];
  readonly stop: () => Promise<void>;
}

/** Starts the whole app as `npm start` does, on a free port, with a database of its own that is gone afterwards. */
export async function startApp(words: readonly string[] = []): Promise<App> {
  const port = await freePort();
  const data = await mkdtemp(join(tmpdir(), "tarlatan-app-"));
  const { DATABASE_URL: _, ...inherited } = process.env;
  const env = { ...inherited, PORT: String(port), HOST: "127.0.0.1", TARLATAN_DATA: data };
  const child = spawn(process.execPath, ["app/_start/start.mjs", ...words], { env, stdio: ["ignore", "pipe", "pipe"] });
  let output = "";
  const ended = new Promise<void>((done) => child.once("exit", () => done()));
  const ready = new Promise<void>((done, fail) => {
    for (const stream of [child.stdout, child.stderr]) {
      stream.on("data", (chunk: Buffer) => {
        output += chunk.toString();
        if (output.includes("Ctrl-C stops")) done();
      });
    }
    child.once("exit", () => fail(new Error(`The app did not start:\n${output}`)));
  });
  const stop = async () => {
    child.kill("SIGTERM");
    await ended;
    await rm(data, { recursive: true, force: true });
  };
  await ready.catch(async (error) => {
    await rm(data, { recursive: true, force: true });
    throw error;
  });
  return { address: `http://127.0.0.1:${port}`, people: readPeople(output), stop };
}

/** Lines of the form `role  email  password`; a role may be of two words. */
function readPeople(output: string): Person[] {
  return [...output.matchAll(/^ {2}(\S(?:.*?\S)?) +(\S+@\S+) +(\S+)$/gm)].map(([, role = "", email = "", password = ""]) => ({
    role,
    email,
    password,
  }));
}

function freePort(): Promise<number> {
  return new Promise((done, fail) => {
    const server = createServer();
    server.once("error", fail);
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      server.close(() => (address && typeof address === "object" ? done(address.port) : fail(new Error("no port"))));
    });
  });
}
