import { join } from "node:path";
import { capture } from "../run.mjs";
import { guard, playwrightTally, vitestTally } from "./tally.mjs";

const node = process.execPath;
const bin = (path) => join("node_modules", path);

/** Every check that `npm test` makes, in order: the quick ones first. `needs` names what must be there: a database server, built pages. */
export const checks = [
  tool("lint", "Style and slips of the pen", [
    bin("@biomejs/biome/bin/biome"),
    "check",
    "--config-path=tests/config/lint.json",
    "--error-on-warnings",
    ".",
  ]),
  tool("types", "Types", [bin("typescript/bin/tsc"), "--noEmit", "-p", "tests/config/types.json"], [bin("next/dist/bin/next"), "typegen"]),
  tool("directions", "Directions of imports", ["tests/config/cruise.mjs"]),
  tool("dead", "Dead code", [bin("knip/bin/knip.js"), "--config", "tests/config/knip.json"]),
  vitest("architecture", "Sizes, names, paths"),
  vitest("unit", "Unit tests"),
  vitest("published", "Published checks"),
  vitest("seed", "Stagings"),
  // What it says when all is well is shown too: the questions not answered yet.
  vitest("questions", "Questions of the workroom", /^Questions not answered yet\n(?: {2}.*\n)*/m),
  { ...tool("drift", "Schema against migrations", ["--import", "tsx", "prisma/migrate/drift.ts"]), needs: ["database"] },
  { ...vitest("database", "Tests on PostgreSQL"), needs: ["database", "bundle"] },
  { ...playwright(), needs: ["bundle", "pages"] },
];

/** A tool that says by its exit code whether all is well; `first` is run before it. */
function tool(id, name, args, first) {
  const run = async (context) => {
    const before = first ? await capture(node, first, context) : { code: 0, stdout: "", stderr: "" };
    const { code, stdout, stderr } = before.code === 0 ? await capture(node, args, context) : before;
    return guard(code, `${stdout}\n${stderr}`);
  };
  return { id, name, needs: [], run };
}

function vitest(id, name, said) {
  const run = async (context) => {
    const report = join(context.scratch, `${id}.json`);
    const reporters = ["--reporter=dot", "--reporter=json", `--outputFile.json=${report}`];
    const args = [bin("vitest/vitest.mjs"), "run", "--config", "tests/config/vitest.ts", "--project", id, ...reporters];
    const { stdout, stderr } = await capture(node, args, context);
    const tally = await vitestTally(report, `${stdout}\n${stderr}`);
    return { ...tally, notes: tally.notes || (said?.exec(stdout)?.[0] ?? "") };
  };
  return { id, name, needs: [], run };
}

function playwright() {
  const run = async (context) => {
    const report = join(context.scratch, "browser.json");
    const env = { ...context.env, PLAYWRIGHT_JSON_OUTPUT_NAME: report };
    const args = [bin("@playwright/test/cli.js"), "test", "--config", "tests/browser/support/playwright.config.ts", "--reporter=line,json"];
    const { stdout, stderr } = await capture(node, args, { ...context, env });
    return playwrightTally(report, `${stdout}\n${stderr}`);
  };
  return { id: "browser", name: "In a browser", run };
}
