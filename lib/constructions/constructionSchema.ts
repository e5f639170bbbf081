import { z } from "zod";
import { SOURCES } from "#lib/casting/wardrobe";
import { SKILLS } from "#lib/labour/skills";
import { MATERIAL_KINDS } from "#lib/materials/material";
import { MEASUREMENTS } from "#lib/measurements/measurement";
import { type Construction, FITTING_KINDS } from "./construction";

const code = z.string().regex(/^[a-z][A-Za-z0-9-]*$/, "Write a code of letters, figures and dashes that begins with a small letter.");
/** Parameters and drivers are named in formulas, where a dash is a minus. */
const name = z.string().regex(/^[a-z][A-Za-z0-9]*$/, "Write a name of letters and figures that begins with a small letter.");
const text = z.string().trim().min(1, "Write something here.");
const formula = z.string().trim().default("");
/** One word for both usages, or each its own. */
const both = z.union([text.transform((word) => ({ uk: word, us: word })), z.strictObject({ uk: text, us: text })]);
const sources = z.array(z.enum(SOURCES)).min(1).default(["build"]);
const wait = z.union([
  code.transform((on) => ({ on, lagMinutes: 0, lagKind: "elapsed" as const })),
  z.strictObject({ on: code, lagMinutes: z.int().min(0), lagKind: z.enum(["elapsed", "working"]) }),
]);
const waitsFor = z.array(wait).default([]);
const rising = (three: readonly [number, number, number]) => three[0] <= three[1] && three[1] <= three[2];
const amount = z.number().min(0);
const threePoint = z.tuple([amount, amount, amount]).refine(rising, "Write low, likely and high in this order.");

const parameter = z.discriminatedUnion("kind", [
  z.strictObject({ code: name, label: both, kind: z.literal("count"), value: z.int(), min: z.int().min(0), max: z.int() }),
  z.strictObject({ code: name, label: both, kind: z.literal("length"), value: text, min: text, max: text }),
  z.strictObject({ code: name, label: both, kind: z.literal("ratio"), value: z.number(), min: z.number(), max: z.number() }),
  z.strictObject({
    code: name,
    label: both,
    kind: z.literal("choice"),
    value: text,
    options: z.array(z.strictObject({ code: text.regex(/^[^"]+$/, "Write it without double quotes."), label: both })).min(2),
  }),
  z.strictObject({ code: name, label: both, kind: z.literal("yes-no"), value: z.boolean() }),
]);

const layer = z.strictObject({
  count: text,
  depth: text,
  fullness: text,
  seam: text,
  drop: text,
  net: code,
  dyed: text,
  casing: text,
});

const operation = z.strictObject({
  code,
  name: both,
  part: text,
  skill: z.enum(SKILLS),
  machine: text.nullable().default(null),
  setupMinutes: threePoint,
  rates: z.array(z.strictObject({ driver: name, seconds: threePoint })).default([]),
  waitsFor,
  batch: z.boolean().default(false),
  learning: z.int().min(500).max(1000).default(1000),
  pauses: z.boolean().default(true),
  straining: z
    .strictObject({ run: z.int().min(15), rest: z.int().min(5) })
    .nullable()
    .default(null),
  when: formula,
  sources,
});

const fitting = z.strictObject({
  code,
  kind: z.enum(FITTING_KINDS),
  name: both,
  minutes: z.int().min(5),
  waitsFor,
  when: formula,
  sources,
});

const need = z.strictObject({
  role: code,
  label: both,
  kind: z.enum(MATERIAL_KINDS),
  measure: z.enum(["length", "count"]),
  material: z.string().trim().default(""),
  cut: z.enum(["net layers", "pieces", "panels", "plain"]).default("plain"),
  formula,
  count: formula,
  breadth: formula,
  operation: code,
  when: formula,
  sources,
});

/** A construction as a file: the shape only. References, units and order are judged by `checkConstruction`. */
export const constructionSchema: z.ZodType<Construction> = z.strictObject({
  code,
  version: z.int().min(1),
  name: both,
  source: text,
  cautions: z.array(text).default([]),
  medianBody: z.partialRecord(z.enum(MEASUREMENTS), text).default({}),
  parameters: z.array(parameter).max(60).default([]),
  layers: z.array(layer).max(40).default([]),
  drivers: z
    .array(z.strictObject({ code: name, label: both, unit: z.enum(["count", "length", "ratio"]), formula: text }))
    .max(80)
    .default([]),
  operations: z.array(operation).min(1).max(80),
  fittings: z.array(fitting).max(20).default([]),
  needs: z.array(need).max(60).default([]),
});
