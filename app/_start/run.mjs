import { spawn } from "node:child_process";
import { Complaint, complaintIn } from "./complaint.mjs";
import { root } from "./folders.mjs";

/**
 * Runs a command to its end. Gives its exit code and all that it wrote.
 * @param options.signal stops the command
 */
export function capture(command, args, { env = process.env, signal, input, ids = {} } = {}) {
  return new Promise((done, fail) => {
    const child = spawn(command, args, {
      cwd: root,
      env,
      signal,
      ...ids,
      stdio: [input === undefined ? "ignore" : "pipe", "pipe", "pipe"],
    });
    let stdout = "";
    let stderr = "";
    child.stdout.on("data", (chunk) => {
      stdout += chunk;
    });
    child.stderr.on("data", (chunk) => {
      stderr += chunk;
    });
    child.on("error", fail);
    child.on("close", (code) => done({ code: code ?? 1, stdout, stderr }));
    child.stdin?.end(input);
  });
}

/** Runs a command that must succeed. @throws Complaint with the end of its output */
export async function mustRun(what, command, args, options) {
  const { code, stdout, stderr } = await capture(command, args, options);
  if (code === 0) return stdout;
  const output = `${stdout}\n${stderr}`.trim();
  throw new Complaint(complaintIn(output) ?? `${what} failed (exit code ${code}):\n${output.split("\n").slice(-25).join("\n")}`);
}
