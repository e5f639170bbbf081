import { Worker } from "node:worker_threads";
import type { CutOrder } from "./cutInThread";

/** Bundled, the thread's file lies beside this one; in development and in tests it is read as TypeScript. */
export function startCutThread(workerData: CutOrder): Worker {
  const here = import.meta.url;
  if (here.endsWith(".mjs")) return new Worker(new URL("./cutThread.mjs", here), { workerData });
  // A loader named on a thread's command line is passed over when the parent has one already: the thread asks for it itself.
  const [loader, file] = [import.meta.resolve("tsx/esm/api"), new URL("./cutThread.ts", here).href].map((url) => JSON.stringify(url));
  const start = `import(${loader}).then(({ tsImport }) => tsImport(${file}, ${file}))`;
  return new Worker(start, { eval: true, workerData });
}
