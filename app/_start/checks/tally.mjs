import { readFile } from "node:fs/promises";

/** Passed and failed of one step; `notes` are shown when something failed. */
export const guard = (code, output) => ({ passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1, notes: code === 0 ? "" : output });

/**
 * Counts of a Vitest run from its JSON report. A file that could not be loaded, a test that was skipped and a run without any test
 * count as failed: nothing may be left out silently.
 */
export async function vitestTally(reportFile, output) {
  const report = await readReport(reportFile);
  if (!report) return { passed: 0, failed: 1, notes: output };
  const broken = report.testResults.filter(
    (file) => file.status === "failed" && file.assertionResults.every((test) => test.status !== "failed"),
  );
  return settle(report.numPassedTests, report.numFailedTests + broken.length, report.numPendingTests + report.numTodoTests, output);
}

/** Counts of a Playwright run from its JSON report, by the same rules; an unsteady test counts as failed. */
export async function playwrightTally(reportFile, output) {
  const report = await readReport(reportFile);
  if (!report) return { passed: 0, failed: 1, notes: output };
  const { expected, unexpected, flaky, skipped } = report.stats;
  const errors = report.errors.map((error) => error.message).join("\n");
  return settle(expected, unexpected + flaky + report.errors.length, skipped, `${errors}\n${output}`);
}

function settle(passed, failed, skipped, output) {
  if (skipped > 0) return { passed, failed: failed + skipped, notes: `${skipped} tests were skipped, which counts as failed.\n${output}` };
  if (passed + failed === 0) return { passed: 0, failed: 1, notes: `No test was found, which counts as failed.\n${output}` };
  return { passed, failed, notes: failed > 0 ? output : "" };
}

const readReport = (file) =>
  readFile(file, "utf8").then(
    (text) => JSON.parse(text),
    () => null,
  );
