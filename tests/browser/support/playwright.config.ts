import { defineConfig } from "@playwright/test";
import { launchOptions } from "./findBrowser";

export default defineConfig({
  testDir: "..",
  testMatch: "**/*.spec.ts",
  outputDir: "../../../.tarlatan/test-results",
  globalSetup: "./globalSetup.ts",
  forbidOnly: true,
  fullyParallel: true,
  workers: 2,
  timeout: 45_000,
  expect: { timeout: 10_000 },
  reporter: "line",
  use: {
    // Set by the global setup; the workers read this file again after it.
    baseURL: process.env.TARLATAN_TEST_ADDRESS,
    viewport: { width: 1440, height: 900 },
    locale: "en-GB",
    timezoneId: "Europe/London",
    launchOptions: await launchOptions(),
    screenshot: "only-on-failure",
    trace: "off",
  },
});
