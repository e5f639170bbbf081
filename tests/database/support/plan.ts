import type { StoredPlan } from "#lib/planning/storedPlan";

/** A plan for the sample staging, with something in every field and every null. */
export const samplePlan: StoredPlan = {
  seed: 7,
  rounds: 40,
  schedules: 12_345,
  rule: "least slack",
  inputRevision: 1,
  measures: { weightedLateness: 0, lateDues: 0, overtimeMinutes: 30, unevenness: 0.125, moved: 0, finish: 30_000_000, visits: 1 },
  bounds: { weightedLateness: 0, finish: 29_990_000, overtimeMinutes: null, reasons: ["critical path"] },
  rows: [
    {
      key: "RM 001+2/cut",
      start: 29_990_000,
      end: 29_990_300,
      makers: [
        { maker: "tam", skill: "pattern" },
        { maker: "iri", skill: "net" },
      ],
      overtime: true,
      worked: [
        { start: 29_990_000, end: 29_990_100 },
        { start: 29_990_200, end: 29_990_300 },
      ],
      machine: "table",
      unplaced: null,
    },
    {
      key: "RM 001/first",
      start: 29_991_000,
      end: 29_991_030,
      makers: [{ maker: "tam", skill: "fit" }],
      overtime: false,
      worked: [{ start: 29_991_000, end: 29_991_030 }],
      machine: null,
      unplaced: null,
    },
    {
      key: "RM 002/dye",
      start: null,
      end: null,
      makers: [],
      overtime: false,
      worked: [],
      machine: null,
      unplaced: { reason: "no one has the skill", detail: "Nobody dyes." },
    },
  ],
  visits: [{ performer: "vale", fitter: "tam", room: "room", start: 29_991_000, end: 29_991_030, fittings: ["RM 001/first"] }],
};
