import type { GarmentWork, Need } from "#lib/breakdown/work";
import type { Lot, Material, Offer } from "#lib/materials/material";
import type { Production } from "#lib/staging/staging";
import { LENGTH_PER_INCH, LENGTH_PER_MM, LENGTH_PER_YARD } from "#lib/units/quantities";

export const inches = (count: number): number => Math.round(count * LENGTH_PER_INCH);
export const yards = (count: number): number => Math.round(count * LENGTH_PER_YARD);
export const centimetres = (count: number): number => Math.round(count * 10 * LENGTH_PER_MM);

export const production = {
  code: "LM",
  title: "The Lantern Marsh",
  subtitle: "",
  workroom: "main",
  starts: "2027-03-08",
  budget: null,
  currency: "GBP",
  zone: "Europe/London",
  words: "uk",
  lengths: "in",
  prefix: "LM",
  visitsPerWeek: null,
} as Production;

/** Stiff net, 54 in wide. */
export const net: Material = {
  code: "NET",
  name: "Stiff net",
  kind: "net",
  measure: "length",
  colour: "heron grey",
  width: inches(54),
  cuttable: inches(54),
  shrinkage: 0,
  spare: 0,
  kerf: 0,
  keep: null,
  grain: "fixed",
};
export const bone: Material = { ...net, code: "BONE", name: "Spiral steel", kind: "bone", colour: "", width: null, cuttable: null };
export const hooks: Material = { ...bone, code: "HOOK", name: "Hooks", kind: "hook", measure: "count" };

export const offerOf = (material: Material, pack: number, price: number, more: Partial<Offer> = {}): Offer => ({
  material: material.code,
  supplier: "Pellow & Sile",
  pack,
  minimumPacks: 1,
  prices: [{ from: 1, price }],
  leadDays: 7,
  inspectionDays: 2,
  breaks: "all",
  orderCost: 0,
  ...more,
});

export const lotOf = (material: Material, code: string, quantity: number, more: Partial<Lot> = {}): Lot => ({
  code,
  material: material.code,
  dyeLot: code,
  quantity,
  location: "shelf B",
  breadth: null,
  arrives: null,
  ...more,
});

export const needOf = (garment: string, material: Material, quantity: number, more: Partial<Need> = {}): Need => ({
  garment,
  role: material.kind,
  label: { uk: material.name, us: material.name },
  material: material.code,
  measure: material.measure,
  quantity,
  cuts: [],
  oneLotSet: null,
  operation: "cut",
  arithmetic: "",
  ...more,
});

/** `count` alike pieces of one length. */
export const piecesNeed = (garment: string, material: Material, length: number, count: number, more: Partial<Need> = {}): Need =>
  needOf(garment, material, length * count, { cuts: [{ label: "piece", length, breadth: null, count }], ...more });

export const worksOf = (needs: readonly Need[]): readonly GarmentWork[] =>
  [...new Set(needs.map((need) => need.garment))].map((garment) => ({
    garment,
    construction: null,
    drivers: [],
    operations: [],
    fittings: [],
    layers: [],
    notes: [],
    needs: needs.filter((need) => need.garment === garment),
  }));
