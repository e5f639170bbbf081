import { describe, expect, it } from "vitest";
import { isPlausible } from "#lib/measurements/limits";
import type { Measurement } from "#lib/measurements/measurement";
import { library } from "../../seed/constructions/library";
import survey from "./ansur.json";
import { surveyBodies } from "./bodies";
import limits from "./limits.json";
import { sizeGroups } from "./sizeGroups";
import { spreadTable, sumOf } from "./spread";
import { surveyed } from "./survey";

/** A twentieth of the survey; the bench of the same name makes everything for everybody. */
const bodies = surveyBodies(20);
const surveys = surveyed(library, bodies);

describe("bodies of a published survey", () => {
  it("are 1,986 women and 4,082 men", () => {
    const sexes = surveyBodies().map(({ sex }) => sex);
    expect([sexes.filter((sex) => sex === "F").length, sexes.filter((sex) => sex === "M").length]).toEqual([1986, 4082]);
  });

  it("show nothing a tape cannot show", () => {
    const odd = surveyBodies().flatMap(({ values }) =>
      Object.entries(values).filter(([name, value]) => !isPlausible(name as Measurement, value)),
    );
    expect(odd).toEqual([]);
  });

  it("give no natural waist and no nape to waist, which the survey takes at the navel", () => {
    expect(Object.keys(survey.taken)).not.toEqual(expect.arrayContaining(["waist"]));
    expect(Object.values(survey.taken).filter((column) => /waist|omphalion/.test(column))).toEqual([]);
    for (const derived of Object.values(survey.derived))
      expect(Object.keys(derived)).toEqual(expect.arrayContaining(["waist", "napeToWaist"]));
  });

  it("fall into size groups that hold each of them once", () => {
    const groups = sizeGroups(bodies);
    expect(groups.reduce((sum, { members }) => sum + members.length, 0)).toBe(bodies.length);
    expect(groups.length).toBeGreaterThan(12);
  });
});

describe("every construction, made for every body and every size group", () => {
  it("has its limits stated", () => {
    expect(Object.keys(limits.constructions).sort()).toEqual(library.map(({ code }) => code).sort());
  });

  it.each(surveys)("$construction takes nothing negative or absurd, and stands on no figure but the body's", ({ absurd, bodies: made }) => {
    expect(made.length).toBe(bodies.length);
    expect(absurd).toEqual([]);
  });

  it.each(surveys)(
    "$construction: reckoned on size groups before casting, hours come within 3% and net within 5%",
    ({ groups, bodies: made }) => {
      expect(Math.abs(sumOf(groups, "hours") / sumOf(made, "hours") - 1)).toBeLessThan(0.03);
      const net = sumOf(made, "net");
      if (net > 0) expect(Math.abs(sumOf(groups, "net") / net - 1)).toBeLessThan(0.05);
    },
  );

  it("is listed with median and spread", () => {
    const table = spreadTable(surveys);
    process.stdout.write(`${bodies.length} bodies\n${table}\n`);
    expect(table.split("\n").length).toBe(library.length + 1);
  });
});
