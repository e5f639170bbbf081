import { spawn } from "node:child_process";
import { closeSync, openSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { pathToFileURL } from "node:url";
import { root } from "./folders.mjs";

const endWithParent = pathToFileURL(new URL("./endWithParent.mjs", import.meta.url).pathname).href;

/**
 * Starts a part of the app that runs until it is stopped. Its words go to a log file, or to this terminal when there is none.
 * `ended` resolves with its exit code.
 */
export function startService(name, args, { env, logFile }) {
  const log = logFile ? openSync(logFile, "w", 0o600) : "inherit";
  // In a group of its own, so that Ctrl-C reaches it through this process and in the right order.
  const child = spawn(process.execPath, ["--import", endWithParent, "--enable-source-maps", ...args], {
    cwd: root,
    env,
    detached: process.platform !== "win32",
    stdio: ["ignore", log, log],
  });
  if (typeof log === "number") closeSync(log);
  const ended = new Promise((done) => {
    child.once("error", () => done(1));
    child.once("exit", (code) => done(code ?? 1));
  });
  return {
    name,
    ended,
    async stop() {
      if (child.exitCode !== null || child.signalCode !== null) return;
      child.kill("SIGTERM");
      const forced = setTimeout(() => child.kill("SIGKILL"), 10_000);
      await ended;
      clearTimeout(forced);
    },
    lastWords: async () => (logFile ? (await readFile(logFile, "utf8")).trim().split("\n").slice(-12).join("\n") : ""),
  };
}
