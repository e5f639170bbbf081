import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { writeStaging } from "#lib/staging/writeStaging";
import { designsAlone } from "#lib/whatif/fixtures";
import { seedStaging } from "./plannedFolder";

const root = new URL("../..", import.meta.url).pathname;
const TODAY = ["--today", "2027-01-11"];

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
const copy = (name: string) => {
  const to = join(folder, name);
  cpSync(join(root, "seed/small"), to, { recursive: true });
  return to;
};

describe("the compare command", () => {
  it("tells what casting changed, writes its tables, and gives the same as JSON", async () => {
    const designs = copy("designs");
    for (const [name, text] of writeStaging(designsAlone(await seedStaging("small"))))
      if (name.endsWith(".csv")) writeFileSync(join(designs, name), text);
    const args = ["compare", designs, "seed/small", "--rounds", "1", ...TODAY];
    const { status, stdout, stderr } = run(...args, "--out", join(folder, "changes"));
    expect([status, stderr.includes("Written to")]).toEqual([0, true]);
    expect(stdout).toMatch(/^fittings +39 +42 +\+3$/m);
    expect(stdout).toMatch(/^ {2}net-soft-white .*\+1\.01 yd$/m);
    expect(readdirSync(join(folder, "changes")).sort()).toEqual(["fittings.csv", "garments.csv", "materials.csv", "money.csv"]);
    expect(readFileSync(join(folder, "changes/fittings.csv"), "utf8").trim().split("\r\n")).toHaveLength(1 + 42);
    const json = JSON.parse(run(...args, "--json").stdout);
    expect(json).toMatchObject({ before: { fittings: 39 }, after: { fittings: 42 } });
  });

  it("tells which folder has faults, ends with 2, and writes nothing", () => {
    const { status, stdout, stderr } = run("compare", "seed/small", join(folder, "nowhere"), "--out", join(folder, "none"));
    expect([status, stdout, existsSync(join(folder, "none"))]).toEqual([2, "", false]);
    expect(stderr).toContain("nowhere");
  });
});

describe("the sources command", () => {
  it("tells what each source takes, or why it cannot be had so", () => {
    const { status, stdout } = run(
      "sources",
      "seed/small",
      "lark-headpiece",
      "--hire",
      "40",
      "--hire-days",
      "14",
      "--rounds",
      "0",
      ...TODAY,
    );
    expect(status).toBe(0);
    expect(stdout).toMatch(/^ {2}build \* .*10 h 06 /m);
    expect(stdout).toMatch(/^ {2}pull +Nothing of the kind is in stock\.$/m);
    expect(stdout).toMatch(/^ {2}hire .*£40\.00.*At the price given\.$/m);
    expect(stdout).toMatch(/^ {2}buy +No price is known\.$/m);
  });

  it("says what is wrong with the command, and ends with 2", () => {
    expect(run("sources", "seed/small", "lark-headpeice").stderr).toContain('Did you mean "lark-headpiece"');
    const { status, stderr } = run("sources", "seed/small", "lark-headpiece", "--hire", "lots");
    expect(status).toBe(2);
    expect(stderr).toContain("--hire:");
  });
});

describe("the versions command", () => {
  const library = readFileSync(join(root, "seed/constructions/headpiece.json"), "utf8");
  /** Ten minutes more of setting up for the pattern, whatever the garment. */
  const changed = () => {
    const construction = JSON.parse(library);
    const [pattern, ...others] = construction.operations;
    const slower = { ...pattern, setupMinutes: pattern.setupMinutes.map((minutes: number) => minutes + 10) };
    const file = join(folder, "changed.json");
    writeFileSync(file, JSON.stringify({ ...construction, version: 2, operations: [slower, ...others] }));
    return file;
  };

  it("tells the effect and writes nothing unless told", () => {
    const staging = copy("untouched");
    const { status, stdout } = run("versions", staging, "headpiece", changed());
    expect(status).toBe(0);
    expect(stdout).toContain("Version 1 to 2: 1 garment would change.");
    expect(stdout).toMatch(/^Likely .*: low \+10 min, likely \+10 min, high \+10 min\.$/m);
    expect(readdirSync(staging)).toEqual(readdirSync(join(root, "seed/small")));
  });

  it("keeps the new version beside the old one and moves the pieces when told", () => {
    const staging = copy("moved");
    expect(run("versions", staging, "headpiece", changed(), "--write").status).toBe(0);
    expect(readdirSync(join(staging, "constructions"))).toEqual(["headpiece.json", "headpiece@2.json"]);
    expect(JSON.parse(readFileSync(join(staging, "constructions/headpiece.json"), "utf8"))).toMatchObject({
      code: "headpiece",
      version: 1,
    });
    expect(run("check", staging).stdout).toContain("No faults.");
    const again = run("versions", staging, "headpiece", changed());
    expect([again.status, again.stderr]).toEqual([2, expect.stringContaining("higher version, for example 3")]);
  });

  it("leaves pieces that are not listed with the version they have", () => {
    const staging = copy("listed");
    const { status, stdout } = run("versions", staging, "headpiece", changed(), "--pieces", "lark-tutu", "--write");
    expect([status, stdout, existsSync(join(staging, "constructions"))]).toEqual([2, "", false]);
    expect(run("versions", staging, "headpiece", changed(), "--pieces", "WL 010", "--write").status).toBe(0);
    expect(readFileSync(join(staging, "pieces.csv"), "utf8")).toMatch(/^lark-headpiece,lark,Lark headpiece,build,headpiece,,/m);
  });
});
