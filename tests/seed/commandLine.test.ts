import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

const root = new URL("../..", import.meta.url).pathname;
const FILES = ["cutting.csv", "fittings.csv", "load.csv", "notes.csv", "plan.csv", "purchase.csv", "summary.json", "tasks.csv"];

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "tarlatan-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

const run = (...args: readonly string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ["--import", "tsx", "app/_cli/main.ts", ...args], {
    cwd: root,
    encoding: "utf8",
  });
  return { status, stdout, stderr };
};
const plan = (staging: string, out: string, ...more: readonly string[]) =>
  run("plan", staging, "--out", join(folder, out), "--today", "2027-01-11", ...more);
const text = (out: string, name: string) => readFileSync(join(folder, out, name), "utf8");

describe("the plan command", () => {
  it("writes every table and the summary, data on standard output and words on standard error", () => {
    const { status, stdout, stderr } = plan("seed/small", "one", "--rounds", "10", "--json");
    expect(status).toBe(0);
    expect(readdirSync(join(folder, "one")).sort()).toEqual(FILES);
    expect(JSON.parse(stdout)).toEqual(JSON.parse(text("one", "summary.json")));
    expect(JSON.parse(stdout)).toMatchObject({
      production: "winter-for-larks",
      garments: 12,
      rounds: 10,
      seed: 1,
      lateGarments: 0,
      unplaced: 0,
    });
    expect(stderr).toContain("Planning A Winter for Larks from 2027-01-11");
    expect(readdirSync(folder)).toEqual(["one"]);
  });

  it("writes the same bytes for the same seed and rounds", () => {
    expect(plan("seed/small", "two", "--rounds", "10").status).toBe(0);
    for (const name of FILES) expect(text("two", name)).toBe(text("one", name));
  });

  it("replaces its own files and leaves others alone", () => {
    writeFileSync(join(folder, "two", "mine.txt"), "kept");
    expect(plan("seed/small", "two", "--rounds", "0").status).toBe(0);
    expect(text("two", "mine.txt")).toBe("kept");
    expect(JSON.parse(text("two", "summary.json")).rounds).toBe(0);
  });

  it("tells every fault with its place and mend, ends with 2, and writes nothing", () => {
    const staging = join(folder, "faulty");
    cpSync(join(root, "seed/small"), staging, { recursive: true });
    const pieces = readFileSync(join(staging, "pieces.csv"), "utf8");
    writeFileSync(join(staging, "pieces.csv"), pieces.replace(",build,boned-bodice,", ",bild,boned-bodyce,"));
    const { status, stdout, stderr } = plan(staging, "none", "--rounds", "0");
    expect(status).toBe(2);
    expect(stdout).toBe("");
    expect(stderr).toMatch(/^pieces\.csv:4:source: .*bild.*build/m);
    expect(stderr).toMatch(/^pieces\.csv:4:construction: .*boned-bodyce.*Did you mean "boned-bodice"/m);
    expect(existsSync(join(folder, "none"))).toBe(false);
    expect(run("check", staging).status).toBe(2);
  });

  it("says in words, on standard error, what is wrong with the command itself", () => {
    for (const args of [["plam"], ["plan", "seed/small"], ["plan", join(folder, "nowhere"), "--out", join(folder, "none")]]) {
      const { status, stdout, stderr } = run(...args);
      expect([status, stdout]).toEqual([2, ""]);
      expect(stderr).toMatch(/Did you mean "plan"|--out DIR|no such folder/);
    }
  });

  it("helps with examples first", () => {
    const { status, stdout } = run("plan", "--help");
    expect(status).toBe(0);
    expect(stdout.indexOf("Examples")).toBeLessThan(stdout.indexOf("Usage"));
    expect(run("check", "seed/small").stdout).toContain("No faults.");
  });
});
