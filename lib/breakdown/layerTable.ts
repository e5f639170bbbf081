import type { NetLayer } from "#lib/constructions/construction";
import type { Value } from "#lib/constructions/evaluate";
import type { LayerSum } from "#lib/constructions/scope";
import { LENGTH_PER_INCH, type Length } from "#lib/units/quantities";
import type { FormulaReader } from "./formulaReader";
import { materialOf } from "./materialOf";
import { netLayers, type WantedLayer } from "./netLayers";
import type { MakingRequest } from "./request";
import type { ComputedLayer, WorkNote } from "./work";

/** Net on the roll, where a material does not say: common practice, no source. */
const USUAL_NET: Length = 54 * LENGTH_PER_INCH;
/** No skirt has more layers; a formula that asks for more is a slip. */
const MOST_LAYERS = 60;

/** The layer table of a garment, worked out from parameters and body. */
export const layerTable = (
  request: MakingRequest,
  formulas: FormulaReader,
  values: ReadonlyMap<string, Value>,
  note: (kind: WorkNote["kind"], text: string) => void,
): readonly ComputedLayer[] => {
  const wanted: WantedLayer[] = [];
  for (const row of request.construction.layers) {
    const count = numberOf(formulas.work(row.count, values), (text) => note("parameter", `Layers: ${text}`));
    for (let one = 0; one < count; one++) {
      if (wanted.length === MOST_LAYERS) {
        note("parameter", `More than ${MOST_LAYERS} layers are asked for; the first ${MOST_LAYERS} are worked out.`);
        return netLayers(wanted);
      }
      wanted.push(wantedLayer(row, wanted.length + 1, request, formulas, values, note));
    }
  }
  return netLayers(wanted);
};

const wantedLayer = (
  row: NetLayer,
  layer: number,
  request: MakingRequest,
  formulas: FormulaReader,
  values: ReadonlyMap<string, Value>,
  note: (kind: WorkNote["kind"], text: string) => void,
): WantedLayer => {
  const here = new Map(values).set("layer", layer);
  const cell = (text: string) => formulas.work(text, here);
  const number = (name: string, text: string) => numberOf(cell(text), (fault) => note("parameter", `Layer ${layer}, ${name}: ${fault}`));
  const dyed = cell(row.dyed);
  const casing = cell(row.casing);
  const { code, material } = materialOf(request, row.net);
  if (!material?.cuttable) note("material", `The width of ${code || row.net} is not known; 54 in is taken, the usual width of net.`);
  return {
    depth: Math.round(number("depth", row.depth)),
    fullness: number("fullness", row.fullness),
    seam: Math.round(number("seam", row.seam)),
    drop: Math.round(number("drop", row.drop)),
    net: row.net,
    material: code,
    cuttable: material?.cuttable ?? USUAL_NET,
    dyed: dyed.ok && (dyed.value === "whole" || dyed.value === "edge") ? dyed.value : "none",
    casing: casing.ok && casing.value === true,
  };
};

/** A number that cannot be worked out, or is negative, counts as none and is told. */
export const numberOf = (
  worked:
    | { readonly ok: true; readonly value: Value }
    | { readonly ok: false; readonly error: { readonly problem: string; readonly mend: string } },
  tell: (text: string) => void,
): number => {
  if (!worked.ok) {
    tell(`${worked.error.problem} ${worked.error.mend} Taken as 0.`);
    return 0;
  }
  const value = Number(worked.value);
  if (value >= 0) return value;
  tell("It comes to less than nothing. Taken as 0.");
  return 0;
};

/** Sums over the table, as formulas name them. */
export const layerSums = (layers: readonly ComputedLayer[]): Readonly<Record<LayerSum, number>> => {
  const sum = (of: (layer: ComputedLayer) => number) => layers.reduce((total, layer) => total + of(layer), 0);
  return {
    "net.layers": layers.length,
    "net.widths": sum((layer) => layer.widths),
    "net.strip": sum((layer) => layer.strip),
    "net.roll": sum((layer) => layer.roll),
    "net.line": sum((layer) => layer.seam),
    "net.top": layers.at(-1)?.depth ?? 0,
    "net.casings": layers.filter((layer) => layer.casing).length,
    "net.casing": Math.max(0, ...layers.map((layer) => (layer.casing ? layer.depth : 0))),
    "net.dyed": sum((layer) => (layer.dyed === "none" ? 0 : layer.roll)),
  };
};
