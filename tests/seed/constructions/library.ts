import { readdirSync, readFileSync } from "node:fs";
import type { Construction } from "#lib/constructions/construction";
import { readConstruction } from "#lib/constructions/readConstruction";
import { faultText } from "#lib/exchange/fault";

const FOLDER = "seed/constructions";

/** Every construction of the library, as it is read from its file. */
export const library: readonly Construction[] = readdirSync(FOLDER)
  .filter((file) => file.endsWith(".json"))
  .sort()
  .map((file) => {
    const read = readConstruction(readFileSync(`${FOLDER}/${file}`, "utf8"), file);
    if (!read.ok) throw new Error(read.error.map(faultText).join("\n"));
    return read.value;
  });

export const named = (code: string): Construction => library.find((construction) => construction.code === code)!;
