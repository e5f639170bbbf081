import { readdirSync, readFileSync } from "node:fs";
import { breakDownOne } from "#lib/breakdown/breakDownOne";
import type { GarmentWork } from "#lib/breakdown/work";
import type { Source } from "#lib/casting/wardrobe";
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

/** What it is for in the first place: making, buying or altering. */
export const sourceOf = ({ operations }: Construction): Source =>
  (["build", "buy", "alter"] as const).find((source) => operations.some(({ sources }) => sources.includes(source)))!;

/** One garment of it for the median body, first of its set. */
export const medianWork = (
  construction: Construction,
  parameters: Readonly<Record<string, string>> = {},
  source: Source = sourceOf(construction),
): GarmentWork =>
  breakDownOne({
    garment: "T 1",
    construction,
    source,
    parameters,
    body: {},
    chosen: {},
    materials: new Map(),
    ordinal: 1,
    oneLotSet: null,
    wearers: 1,
    reader: { words: "uk", lengths: "cm" },
  });
