import type { ComputedLayer } from "#lib/breakdown/work";
import type { BothWords } from "#lib/constructions/construction";
import { LENGTH_PER_MM, LENGTH_PER_YARD, type Length } from "#lib/units/quantities";
import { type LengthSystem, showLength } from "#lib/units/showLength";
import type { SectionSkirt } from "./sectionSkirt";

export interface SectionOptions {
  readonly lengths: LengthSystem;
  readonly words: keyof BothWords;
}

/** `15.2 yd`, `13.9 m`: to a tenth, for a sum that is read at a glance. */
const cloth = (length: Length, system: LengthSystem): string =>
  system === "in" ? `${(length / LENGTH_PER_YARD).toFixed(1)} yd` : `${(length / (1000 * LENGTH_PER_MM)).toFixed(1)} m`;

const sum = (layers: readonly ComputedLayer[], of: (layer: ComputedLayer) => number) =>
  layers.reduce((total, layer) => total + of(layer), 0);

/** Every word on a section, in the reader's units. */
export const sectionWords = (layers: readonly ComputedLayer[], skirt: SectionSkirt, { lengths, words }: SectionOptions) => {
  const show = (length: Length) => showLength(length, lengths);
  const top = layers.at(-1);
  const apart = layers.length > 1 ? Math.abs(layers[0]!.drop - layers[1]!.drop) : 0;
  const [lowestDepth, topDepth] = [show(layers[0]?.depth ?? 0), show(top?.depth ?? 0)];
  const reach = skirt.hip / (2 * Math.PI) + (top?.depth ?? 0) * Math.cos((3 * Math.PI) / 180);
  const { hoop } = skirt;
  return {
    waist: words === "uk" ? "petersham" : "grosgrain",
    basque: skirt.basque > 0 ? `${show(skirt.basque)} deep` : "",
    knickers: words === "uk" ? "knickers" : "panty",
    rows: `${layers.length} rows${apart > 0 ? `, ${show(apart)} apart` : ""}`,
    topDepth: `${topDepth}, top layer`,
    toHoop: hoop ? `${show((hoop.ring - skirt.hip) / (2 * Math.PI))} to the hoop` : "",
    reach: `${show(reach)} from the centre: ${show(2 * reach)} across`,
    hoop: hoop
      ? [
          `hoop in layer ${hoop.layer}`,
          `${hoop.wires === 1 ? "single" : "double"} wire, cut ${show(hoop.cut)}`,
          `ring ${show(hoop.ring)}, and ${show(hoop.cut - hoop.ring)} to lap`,
        ]
      : [],
    depthHead: `deep, ${lengths}`,
    depths: layers.map(({ depth }) => show(depth).replace(/ (in|cm)$/, "")),
    roll: cloth(
      sum(layers, ({ roll }) => roll),
      lengths,
    ),
    strip: cloth(
      sum(layers, ({ strip }) => strip),
      lengths,
    ),
    sentence: [
      `Cross-section of the skirt: ${layers.length} layers of net, ${lowestDepth} to ${topDepth} deep`,
      hoop ? `, a hoop in layer ${hoop.layer}` : ", no hoop",
      skirt.tacks > 0 ? `, ${skirt.tacks} tacks` : "",
      `, ${show(2 * reach)} across.`,
    ].join(""),
  };
};
export type SectionWords = ReturnType<typeof sectionWords>;
