import { defineConfig } from "vitest/config";

/** A far time zone, so that a forgotten zone fails. */
process.env.TZ = "Asia/Kathmandu";

export default defineConfig({
  root: new URL("../..", import.meta.url).pathname,
  resolve: { alias: { "server-only": new URL("../../app/_start/nothing.mjs", import.meta.url).pathname } },
  test: {
    setupFiles: ["tests/config/properties.ts"],
    hookTimeout: 60_000,
    projects: [
      { extends: true, test: { name: "unit", include: ["lib/**/*.test.ts", "app/**/*.test.ts"], testTimeout: 30_000 } },
      { extends: true, test: { name: "architecture", include: ["tests/architecture/**/*.test.ts"] } },
      { extends: true, test: { name: "published", include: ["tests/published/**/*.test.ts"], testTimeout: 60_000 } },
      { extends: true, test: { name: "seed", include: ["tests/seed/**/*.test.ts"], testTimeout: 60_000 } },
      { extends: true, test: { name: "questions", include: ["tests/questions/**/*.test.ts"], testTimeout: 60_000 } },
      {
        extends: true,
        test: {
          name: "database",
          include: ["tests/database/**/*.test.ts", "tests/start/**/*.test.ts", "tests/jobs/**/*.test.ts"],
          testTimeout: 60_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
