import type { Source } from "#lib/casting/wardrobe";
import type { Construction } from "#lib/constructions/construction";
import { breakDownOne } from "./breakDownOne";
import type { Reader } from "./reader";
import type { GarmentWork } from "./work";

const READER: Reader = { words: "uk", lengths: "cm" };

/** What a construction is for in the first place: making, buying or altering. */
export const sourceOf = ({ operations }: Construction): Source =>
  (["build", "buy", "alter"] as const).find((source) => operations.some(({ sources }) => sources.includes(source))) ?? "build";

/** One garment of a construction for the body its figures were set for, the first of its set: what its figures come to. */
export const medianWork = (
  construction: Construction,
  parameters: Readonly<Record<string, string>> = {},
  source: Source = sourceOf(construction),
  reader: Reader = READER,
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
    reader,
  });
