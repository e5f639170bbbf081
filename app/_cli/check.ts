import { faultLines } from "./faultLines";
import type { Output } from "./output";
import { readFolder } from "./readFolder";

/** Reads a folder and tells what is wrong with it; the exit code. */
export const check = async (folder: string, output: Output): Promise<number> => {
  const read = await readFolder(folder);
  if (!read.ok) {
    output.words(faultLines(read.error));
    return 2;
  }
  const { production, pieces, performers, makers } = read.value;
  output.data(`${production.title}: ${pieces.length} pieces, ${performers.length} performers, ${makers.length} makers. No faults.\n`);
  return 0;
};
