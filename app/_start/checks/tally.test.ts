import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { guard, playwrightTally, vitestTally } from "./tally.mjs";

let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "tarlatan-tally-"));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const report = async (content: unknown): Promise<string> => {
  const file = join(folder, "report.json");
  await writeFile(file, JSON.stringify(content));
  return file;
};
const vitest = (passed: number, failed: number, skipped: number, testResults: unknown[] = []) =>
  report({ numPassedTests: passed, numFailedTests: failed, numPendingTests: skipped, numTodoTests: 0, testResults });
const counts = ({ passed, failed }: { passed: number; failed: number }) => [passed, failed];

describe("counting", () => {
  it("a guard counts as one", () => {
    expect([counts(guard(0, "")), counts(guard(2, "x"))]).toEqual([
      [1, 0],
      [0, 1],
    ]);
  });

  it("a run counts its tests", async () => {
    expect(counts(await vitestTally(await vitest(41, 1, 0), ""))).toEqual([41, 1]);
  });

  it("a file that could not be read counts as failed, once", async () => {
    const results = [
      { status: "failed", assertionResults: [] },
      { status: "failed", assertionResults: [{ status: "failed" }] },
    ];
    expect(counts(await vitestTally(await vitest(3, 1, 0, results), ""))).toEqual([3, 2]);
  });

  it("a skipped test counts as failed", async () => {
    expect(counts(await vitestTally(await vitest(3, 0, 2), ""))).toEqual([3, 2]);
    const stats = { expected: 5, unexpected: 0, flaky: 1, skipped: 1 };
    expect(counts(await playwrightTally(await report({ stats, errors: [] }), ""))).toEqual([5, 2]);
  });

  it("a run without a test, and one without a report, count as failed", async () => {
    expect(counts(await vitestTally(await vitest(0, 0, 0), ""))).toEqual([0, 1]);
    expect(counts(await vitestTally(join(folder, "absent.json"), ""))).toEqual([0, 1]);
  });
});
