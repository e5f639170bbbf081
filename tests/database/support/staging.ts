import type { PlainDate } from "#lib/calendar/plainDate";
import type { Construction } from "#lib/constructions/construction";
import type { Staging } from "#lib/staging/staging";
import { people } from "./people";

const day = (text: string) => text as PlainDate;

const skirt: Construction = {
  code: "plain-skirt",
  version: 2,
  name: { uk: "Skirt", us: "Skirt" },
  source: "invented for a test",
  cautions: ["Mind the ”sharp“ shears."],
  medianBody: { waist: "27 in" },
  parameters: [
    { code: "panels", label: { uk: "Panels", us: "Panels" }, kind: "count", value: 4, min: 1, max: 12 },
    { code: "fullness", label: { uk: "Fullness", us: "Fullness" }, kind: "ratio", value: 10.45, min: 1, max: 20 },
  ],
  layers: [],
  drivers: [{ code: "seam", label: { uk: "Seam", us: "Seam" }, unit: "length", formula: "body.waist * panels" }],
  operations: [],
  fittings: [],
  needs: [],
};

/** A staging with something in every field and every null; all of it invented. */
export const sampleStaging: Staging = {
  ...people,
  production: {
    code: "reedmere",
    title: "Reedmere",
    subtitle: "",
    workroom: "upstairs",
    starts: day("2027-01-18"),
    budget: 5_000_000_000,
    currency: "GBP",
    zone: "Europe/London",
    words: "uk",
    lengths: "in",
    prefix: "RM",
    visitsPerWeek: 3,
  },
  milestones: [
    { code: "parade", kind: "dress parade", name: "Dress parade", date: day("2027-02-26"), at: 600 },
    { code: "opening", kind: "opening", name: "Opening", date: day("2027-03-05"), at: 1140 },
  ],
  costumes: [
    { code: "reeds", name: "Reeds", role: "reeds" },
    { code: "moth", name: "Moth", role: "moth" },
  ],
  sets: [
    {
      code: "reeds",
      name: "Reeds",
      oneDyeLot: true,
      repair: 250,
      prototype: true,
      freeUntil: "cut",
      approvalDays: 2,
      approvedOn: day("2027-02-02"),
    },
    { code: "wings", name: "Wings", oneDyeLot: false, repair: 0, prototype: false, freeUntil: null, approvalDays: 0, approvedOn: null },
  ],
  pieces: [
    {
      code: "reed-skirt",
      costume: "reeds",
      name: "Skirt",
      source: "build",
      construction: "plain-skirt",
      version: 2,
      set: "reeds",
      each: "place",
      parameters: { panels: "6", fullness: "9" },
      materials: { net: "net-54", elastic: "elastic" },
      due: "parade",
      weight: 1.5,
      price: null,
      stock: null,
    },
    {
      code: "moth-wings",
      costume: "moth",
      name: "Wings",
      source: "alter",
      construction: null,
      version: null,
      set: null,
      each: "role",
      parameters: {},
      materials: {},
      due: "opening",
      weight: 1,
      price: 12_50,
      stock: "RM 900",
    },
  ],
  materials: [
    {
      code: "net-54",
      name: "Net",
      kind: "net",
      measure: "length",
      colour: "ash",
      width: 109_728,
      cuttable: 107_696,
      shrinkage: 0,
      spare: 100,
      kerf: 0,
      keep: 36_576,
      grain: "fixed",
    },
    {
      code: "elastic",
      name: "Elastic",
      kind: "elastic",
      measure: "length",
      colour: "",
      width: null,
      cuttable: null,
      shrinkage: 0,
      spare: 0,
      kerf: 160,
      keep: null,
      grain: "free",
    },
  ],
  offers: [
    {
      material: "net-54",
      supplier: "Ghyll & Daughter",
      pack: 3_657_600,
      minimumPacks: 1,
      prices: [
        { from: 1, price: 9_900 },
        { from: 5, price: 8_800 },
      ],
      leadDays: 21,
      inspectionDays: 2,
      breaks: "incremental",
      orderCost: 1_250,
    },
  ],
  lots: [
    { code: "L1", material: "net-54", dyeLot: "77", quantity: 914_400, location: "shelf 3", breadth: null, arrives: null },
    { code: "L2", material: "elastic", dyeLot: "", quantity: 0, location: "", breadth: null, arrives: day("2027-01-20") },
  ],
  approvals: [
    {
      ...{ code: "ash", title: "The ash of the net", by: "choreographer", days: 3, set: "reeds", freeUntil: "cut", material: "net-54" },
      ...{ askedOn: day("2027-01-19"), expectedOn: day("2027-01-22"), approvedOn: day("2027-01-21") },
    },
    {
      ...{ code: "feather", title: "Feathers", by: "designer", days: 0, set: null, freeUntil: null, material: null },
      ...{ askedOn: null, expectedOn: null, approvedOn: null },
    },
  ],
  otherWork: [
    {
      ...{ code: "dip", origin: "sample", title: "Dip three ashes", garment: null, set: null, material: "net-54", gates: null },
      ...{ skill: "dye", minutes: [30, 45, 120], machine: "vat", priority: 1, due: "parade", waitsFor: null, shownFor: "ash" },
      ...{ askedBy: "designer", askedOn: day("2027-01-18"), doneOn: day("2027-01-19") },
    },
    {
      ...{ code: "trim", origin: "by hand", title: "Trim all reeds", garment: null, set: "reeds", material: null, gates: "cut" },
      ...{ skill: "hand", minutes: [5, 5, 5], machine: null, priority: 3, due: null, waitsFor: "reeds", shownFor: null },
      ...{ askedBy: "", askedOn: null, doneOn: null },
    },
    {
      ...{ code: "tip", origin: "parade note", title: "Mend the tip", garment: "RM 003", set: null, material: null, gates: null },
      ...{ skill: "hand", minutes: [10, 20, 30], machine: null, priority: 2, due: "opening", waitsFor: "feather", shownFor: null },
      ...{ askedBy: "Iri", askedOn: day("2027-02-26"), doneOn: null },
    },
  ],
  stock: [{ number: "RM 900", name: "Wings", construction: "plain-skirt", location: "rail 2", condition: "worn", note: "left tip bent" }],
  constructions: [skirt],
};
