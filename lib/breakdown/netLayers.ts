import type { Length } from "#lib/units/quantities";
import type { ComputedLayer } from "./work";

/** A layer of net as it is wanted, before its cloth is worked out. */
export interface WantedLayer {
  readonly depth: Length;
  readonly fullness: number;
  readonly seam: Length;
  readonly drop: Length;
  readonly net: string;
  readonly material: string;
  readonly cuttable: Length;
  readonly dyed: ComputedLayer["dyed"];
  readonly casing: boolean;
}

/** A shortfall of under a twentieth of a width is let go: a maker gathers a little less rather than joining a whole width more. */
const LET_GO = 0.05;

/** Whole widths of cloth that cover a length across. */
export const widthsFor = (length: number, cuttable: Length): number => Math.max(1, Math.ceil(length / cuttable - LET_GO));

/**
 * The cloth of each layer, lowest first. Fullness and cuttable width give the widths, so wider net takes fewer widths for the same skirt;
 * strips are cut across the roll, so the roll gives `widths x depth` and the strip is `widths x cuttable width` long.
 */
export const netLayers = (wanted: readonly WantedLayer[]): readonly ComputedLayer[] =>
  wanted.map((layer, index) => {
    const widths = widthsFor(layer.fullness * layer.seam, layer.cuttable);
    return { layer: index + 1, ...layer, widths, strip: widths * layer.cuttable, roll: widths * layer.depth };
  });
