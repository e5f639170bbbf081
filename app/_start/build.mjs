import { join } from "node:path";
import { bundles, root } from "./folders.mjs";
import { mustRun } from "./run.mjs";
import { hashOf, unlessStamped } from "./stamps.mjs";

const isGenerated = (path) => path === "prisma/generated";
const isTest = (path) => /\.test\.tsx?$/.test(path);

/** Makes the database client from the schema, when that changed. */
export async function generate(signal) {
  const hash = await hashOf(["prisma/schema", "prisma/prisma.config.ts", "package-lock.json"]);
  return unlessStamped(join(root, "prisma/generated/.stamp"), hash, () =>
    mustRun("Making the database client", process.execPath, ["node_modules/prisma/build/index.js", "generate", ...config], {
      // Without this the command would try to download an engine that it does not need here.
      env: { ...process.env, PRISMA_SCHEMA_ENGINE_BINARY: process.execPath, CHECKPOINT_DISABLE: "1" },
      signal,
    }),
  );
}
const config = ["--config", "prisma/prisma.config.ts"];

/** Bundles what runs beside the web server, so that it starts in a moment. */
export async function bundle() {
  const hash = await hashOf(
    ["app/_worker", "app/_start", "lib", "prisma", "seed", "package-lock.json"],
    (path) => isGenerated(path) || isTest(path),
  );
  return unlessStamped(join(bundles, ".stamp"), hash, async () => {
    const { build, stop } = await import("esbuild");
    await build({
      absWorkingDir: root,
      entryPoints: {
        worker: "app/_worker/main.ts",
        levelThread: "app/_worker/levelThread.ts",
        cutThread: "app/_worker/cutThread.ts",
        prepareDatabase: "app/_start/prepareDatabase.ts",
      },
      outdir: bundles,
      outExtension: { ".js": ".mjs" },
      bundle: true,
      platform: "node",
      format: "esm",
      target: "node20",
      packages: "external",
      alias: { "server-only": "./app/_start/nothing.mjs" },
      sourcemap: "linked",
      logLevel: "silent",
    });
    await stop();
  });
}

/** Builds the pages, when anything they are made of changed. */
export async function buildPages(signal) {
  const sources = ["app", "lib", "prisma", "seed", "public", "next.config.ts", "tsconfig.json", "package.json", "package-lock.json"];
  const hash = await hashOf(sources, (path) => isGenerated(path) || isTest(path) || path === "app/_start" || path === "app/_cli");
  return unlessStamped(join(root, ".next/tarlatan-stamp"), hash, () =>
    mustRun("Building the pages", process.execPath, ["node_modules/next/dist/bin/next", "build"], {
      env: { ...process.env, NODE_ENV: "production", NEXT_TELEMETRY_DISABLED: "1", NO_COLOR: "1" },
      signal,
    }),
  );
}
