import { type MessagePort, Worker } from "node:worker_threads";
import type { CutOrder } from "./cutInThread";
import type { IslandOrder } from "./islandElsewhere";
import type { ThreadOrder } from "./levelInThread";

/** Bundled, the thread's file lies beside this one; in development and in tests it is read as TypeScript. */
function start(name: string, workerData: unknown, transferList: readonly MessagePort[] = []): Worker {
  const here = import.meta.url;
  if (here.endsWith(".mjs")) return new Worker(new URL(`./${name}.mjs`, here), { workerData, transferList: [...transferList] });
  // A loader named on a thread's command line is passed over when the parent has one already: the thread asks for it itself.
  const [loader, file] = [import.meta.resolve("tsx/esm/api"), new URL(`./${name}.ts`, here).href].map((url) => JSON.stringify(url));
  const script = `import(${loader}).then(({ tsImport }) => tsImport(${file}, ${file}))`;
  return new Worker(script, { eval: true, workerData, transferList: [...transferList] });
}

export const startThread = (order: ThreadOrder): Worker => start("levelThread", order);

export const startIslandThread = (order: IslandOrder): Worker => start("levelThread", order, [order.port]);

export const startCutThread = (order: CutOrder): Worker => start("cutThread", order);
