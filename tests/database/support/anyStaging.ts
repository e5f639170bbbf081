import * as fc from "fast-check";
import { plainDate } from "#lib/calendar/days";
import { SOURCES } from "#lib/casting/wardrobe";
import { SKILLS } from "#lib/labour/skills";
import { MATERIAL_KINDS } from "#lib/materials/material";
import { MEASUREMENTS } from "#lib/measurements/measurement";
import type { Staging } from "#lib/staging/staging";
import { anyOtherWork } from "./anyOtherWork";
import { sampleStaging } from "./staging";

const text = fc.string({ unit: "grapheme", maxLength: 12 });
const day = fc.integer({ min: 10_000, max: 40_000 }).map(plainDate);
const days = fc.tuple(day, day).map(([one, other]) => (one < other ? [one, other] : [other, one]));
const minutes = fc
  .tuple(fc.integer({ min: 0, max: 1439 }), fc.integer({ min: 1, max: 1440 }))
  .map(([from, to]) => [Math.min(from, to - 1), to]);
const money = fc.integer({ min: 0, max: Number.MAX_SAFE_INTEGER });
const count = fc.integer({ min: 0, max: 10_000 });
const orNull = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });
const some = <T>(code: (at: number) => T, most = 4) =>
  fc.integer({ min: 1, max: most }).map((length) => Array.from({ length }, (_, at) => code(at)));

const hours = fc.array(
  fc.tuple(fc.integer({ min: 1, max: 7 }), minutes).map(([weekday, [from, to]]) => ({ weekday, from, to })),
  { maxLength: 4 },
);

const maker = fc.record({
  ...{ name: text, trade: text, employment: fc.constantFrom("staff", "casual", "outworker"), hours, overtime: hours },
  skills: fc.dictionary(fc.constantFrom(...SKILLS), fc.integer({ min: 1, max: 1500 })),
  ...{ productive: fc.integer({ min: 1, max: 1000 }), reservedMinutesPerWeek: count, costPerHour: money, overtimeCostPerHour: money },
  paceFrom: fc.array(fc.record({ date: day, pace: fc.integer({ min: 1, max: 2000 }) }), { maxLength: 3 }),
  ...{ starts: fc.constant(null), ends: orNull(day) },
});

const material = fc.record({
  ...{ name: text, kind: fc.constantFrom(...MATERIAL_KINDS), measure: fc.constantFrom("length", "count"), colour: text },
  ...{
    width: fc.constant(null),
    cuttable: orNull(fc.integer({ min: 1, max: 2 ** 31 - 1 })),
    shrinkage: fc.integer({ min: 0, max: 999 }),
    spare: count,
    kerf: fc.integer({ min: 0, max: 80_000 }),
    keep: orNull(fc.integer({ min: 1, max: 2 ** 31 - 1 })),
    grain: fc.constantFrom("fixed", "free"),
  },
});

const piece = fc.record({
  ...{ name: text, source: fc.constantFrom(...SOURCES), each: fc.constantFrom("performer", "place", "role"), price: orNull(money) },
  parameters: fc.dictionary(text, text, { maxKeys: 3 }),
  version: fc.constantFrom(null, 2, 3),
  weight: fc.double({ min: 0, max: 1e6, noNaN: true }).map((weight) => weight + 0),
});

/** Any staging that a reader would let through, with the sample's casting and construction. */
export const anyStaging: fc.Arbitrary<Staging> = fc
  .record({
    ...{ makers: some((at) => `maker ${at}`), materials: some((at) => `material ${at}`), pieces: some((at) => `piece ${at}`) },
    ...{ maker: fc.array(maker, { minLength: 4, maxLength: 4 }), material: fc.array(material, { minLength: 4, maxLength: 4 }) },
    piece: fc.array(piece, { minLength: 4, maxLength: 4 }),
    calls: fc.array(fc.record({ performer: fc.constantFrom(null, "vale", "ost"), date: day, minutes }), { maxLength: 5 }),
    absences: fc.array(fc.record({ of: fc.constantFrom(null, "maker 0"), days, reason: text }), { maxLength: 5 }),
    values: fc.dictionary(fc.constantFrom(...MEASUREMENTS), fc.integer({ min: 1, max: 200_000 })),
    packs: fc.array(fc.record({ supplier: text, pack: fc.integer({ min: 1, max: 2 ** 40 }), leadDays: count, price: money }), {
      maxLength: 3,
    }),
    ...{ title: text, budget: orNull(money), starts: day, other: anyOtherWork },
  })
  .map((any) => ({
    ...sampleStaging,
    production: { ...sampleStaging.production, title: any.title, budget: any.budget, starts: any.starts },
    makers: any.makers.map((code, at) => ({ code, ...any.maker[at] })),
    absences: any.absences.map(({ of, days: [from, to], reason }) => ({ maker: of, from, to, fromTime: null, toTime: null, reason })),
    calls: any.calls.map(({ performer, date, minutes: [from, to] }) => ({ performer, date, from, to, kind: "rest" as const })),
    measurements: [{ of: { performer: "ost" }, taken: any.starts, body: "warm" as const, values: any.values }],
    materials: any.materials.map((code, at) => ({ code, ...any.material[at] })),
    offers: any.packs.map(({ price, ...pack }) => ({
      ...{ material: "material 0", ...pack, minimumPacks: 0, inspectionDays: 1, breaks: "all", orderCost: 0 },
      prices: [
        { from: 1, price },
        { from: 3, price: 0 },
      ],
    })),
    lots: [],
    ...any.other,
    constructions: [...sampleStaging.constructions, ...sampleStaging.constructions.map((skirt) => ({ ...skirt, version: 3 }))],
    pieces: any.pieces.map((code, at) => ({
      ...any.piece[at],
      ...{ code, costume: "moth", construction: "plain-skirt", set: null, materials: { net: "material 0" }, due: "opening", stock: null },
    })),
  })) as fc.Arbitrary<Staging>;
