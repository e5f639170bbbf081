import type { Source } from "#lib/casting/wardrobe";
import type { Construction } from "#lib/constructions/construction";
import type { Material } from "#lib/materials/material";
import type { MeasurementValues } from "#lib/measurements/measurement";
import type { Reader } from "./reader";

/** Everything the breakdown of one garment depends on. */
export interface MakingRequest {
  readonly garment: string;
  readonly construction: Construction;
  readonly source: Source;
  /** As written; the construction judges them. */
  readonly parameters: Readonly<Record<string, string>>;
  /** Measurements of the body it is made for; the construction's median stands in, with a note, for one that is missing. */
  readonly body: MeasurementValues;
  /** Material codes by role, where they differ from the construction's own. */
  readonly chosen: Readonly<Record<string, string>>;
  readonly materials: ReadonlyMap<string, Material>;
  /** 1-based place in its set: learning follows it. */
  readonly ordinal: number;
  /** Set whose garments share a dye lot; null when there is none. */
  readonly oneLotSet: string | null;
  /** How many performers it is fitted to. */
  readonly wearers: number;
  readonly reader: Reader;
}
