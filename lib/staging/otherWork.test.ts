import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ORIGINS } from "#lib/approvals/otherWork";
import { plainDate } from "#lib/calendar/days";
import { SKILLS } from "#lib/labour/skills";
import { compareStagings } from "./compare";
import { faultsWith, smallStaging } from "./fixtures";
import { readStaging } from "./readStaging";
import type { Staging } from "./staging";
import { writeStaging } from "./writeStaging";

const WORK = "code,origin,title,garment,set,material,gates,skill,likely,low,high,due,waits_for,shown_for,asked_on,done_on\n";
const APPROVALS = "code,title,days,set,free_until,material,asked_on,expected_on,approved_on\n";
const ASH = `${APPROVALS}ash,Ash grey,2,,,net-54,,,`;
const faults = (work: string, approvals = ASH) => faultsWith({ "other_work.csv": WORK + work, "approvals.csv": approvals });

describe("other work and approvals as files", () => {
  it("are read with what empty cells mean", () => {
    const staging = smallStaging({ "approvals.csv": ASH, "other_work.csv": `${WORK}dip,Sample,Dip,,,net-54,,dye,1 h,,,,,ash,,` });
    expect(staging.approvals).toEqual([
      {
        ...{ code: "ash", title: "Ash grey", by: "designer", days: 2, set: null, freeUntil: null, material: "net-54" },
        ...{ askedOn: null, expectedOn: null, approvedOn: null },
      },
    ]);
    expect(staging.otherWork).toEqual([
      {
        ...{ code: "dip", origin: "sample", title: "Dip", garment: null, set: null, material: "net-54", gates: null, skill: "dye" },
        ...{ minutes: [60, 60, 60], machine: null, priority: 2, due: null, waitsFor: null, shownFor: "ash", askedBy: "" },
        ...{ askedOn: null, doneOn: null },
      },
    ]);
  });

  it.each([
    [
      "n,parade note,Hem,MG 0001,,,,hand,1 h,,,dress,,,,",
      'garment: No garment of the production has the number "MG 0001". Did you mean "MG 001"?',
    ],
    [
      "n,parade note,Hem,MG 001,,,,hand,1 h,,,,,,,",
      "due: Nothing says by when the note must be done. Name a milestone, for example the dress rehearsal.",
    ],
    [
      "n,by hand,Hem,MG 001,skirts,,,hand,1 h,,,,,,,",
      "garment: It is about more than one thing. Keep one of garment, set and material; a row for each.",
    ],
    [
      "n,by hand,Hem,,,,,hand,1 h,2 h,,,,,,",
      "likely: Low, likely and high are not in order. Write the least time as low and the most as high.",
    ],
    ["n,by hand,Hem,,skirts,,mont,hand,1 h,,,,,,,", 'gates: "mont" is no operation of its pieces. Did you mean "mount"?'],
    ["n,by hand,Hem,MG 003,,,gater,hand,1 h,,,,,,,", 'gates: "gater" is no operation of MG 003. Did you mean "gather"?'],
    [
      "n,by hand,Hem,,,,gather,hand,1 h,,,,,,,",
      "gates: It is an operation of no garment. Name the garment or the set, or leave the cell empty.",
    ],
    ["n,sample,Hem,,skirts,,gather,hand,1 h,,,,,,,", "gates: A sample holds nothing up by itself. Let an approval do so in approvals.csv."],
    [
      "n,by hand,Hem,,,,,hand,1 h,,,,,ash,,",
      "shown_for: Only a sample is shown for an approval. Make it a sample, or leave the cell empty.",
    ],
    [
      "n,by hand,Hem,,,,,hand,1 h,,,,ahs,,,",
      'waits_for: "ahs" is no approval of approvals.csv, nor a set of sets.csv with a prototype. Did you mean "ash"?',
    ],
    ["n,by hand,Hem,,,,,hand,1 h,,,,,,2027-02-02,2027-02-01", "done_on: It is done before it is asked for. Exchange the days."],
  ])("tell what is wrong with %s", (row, said) => {
    const found = faults(row);
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(`other_work.csv:2:${said}`);
  });

  it.each([
    ["skirts,Skirts,2,,,,,,", 'code: "skirts" is the approval of a prototype in sets.csv. Give it another code.'],
    ["ash,Ash,2,,gather,,,,", "free_until: It is an operation of no set. Name the set, or leave the cell empty."],
    ["ash,Ash,2,skirts,gater,,,,", 'free_until: "gater" is no operation of its pieces. Did you mean "gather"?'],
    ["ash,Ash,2,,,net,,,", 'material: "net" is not in materials.csv.'],
    ["ash,Ash,2,,,,2027-02-02,2027-02-01,", "expected_on: It is promised before it is asked for. Exchange the days."],
    ["ash,Ash,2,,,,2027-02-02,,2027-02-01", "approved_on: It is approved before it is asked for. Exchange the days."],
    [
      "ash,Ash,2,,,,2027-02-02,,",
      "asked_on: The sample dip is not made yet. Write the day it was done in other_work.csv, or leave this cell empty.",
    ],
  ])("tell what is wrong with the approval %s", (row, said) => {
    const dip = said.includes("sample") ? "dip,sample,Dip,,,net-54,,dye,1 h,,,,,ash,," : "";
    const found = faults(dip, APPROVALS + row);
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(`approvals.csv:2:${said}`);
  });

  it("refuse approvals that wait for each other in a circle, and let them once one is given", () => {
    const rows = (done: string) => [`one,sample,One,,,,,dye,1 h,,,,two,ash,,${done}`, "two,sample,Two,,,,,dye,1 h,,,,ash,two,,"];
    const both = `${ASH}\ntwo,Two,1,,,,,,`;
    expect(faults(rows("").join("\n"), both)).toEqual([
      "other_work.csv:waits_for: Approvals wait for each other in a circle: Ash grey, Two. Let one of them, or its sample, wait for less.",
    ]);
    expect(faults(rows("2027-01-20").join("\n"), both)).toEqual([]);
  });

  it("refuse a sample that waits for a prototype which cannot be cut before the sample is approved", () => {
    expect(faults("dip,sample,Dip,,,,,dye,1 h,,,,skirts,ash,,")).toEqual([
      "other_work.csv:waits_for: Approvals wait for each other in a circle: Snow skirts, Ash grey. Let one of them, or its sample, wait for less.",
    ]);
  });
});

const text = fc.string({ unit: "grapheme", maxLength: 12 }).map((each) => each.trim().replace(/^'+(?=[=+\-@])/, ""));
const some = text.filter((each) => each !== "");
const date = fc.option(fc.integer({ min: 10_000, max: 10_900 }).map(plainDate), { nil: null });
const inOrder = ([first, second]: readonly [ReturnType<typeof plainDate> | null, ReturnType<typeof plainDate> | null]) =>
  first !== null && second !== null && second < first ? [second, first] : [first, second];

const anyWork: fc.Arbitrary<Pick<Staging, "approvals" | "otherWork">> = fc
  .record({
    ...{ title: some, by: some, days: fc.nat(100), set: fc.constantFrom(null, "skirts"), material: fc.constantFrom(null, "net-54") },
    ...{ days2: fc.tuple(date, date), origin: fc.constantFrom(...ORIGINS), skill: fc.constantFrom(...SKILLS), asked: text },
    ...{
      priority: fc.integer({ min: 1, max: 3 }),
      minutes: fc.array(fc.nat(6000), { minLength: 3, maxLength: 3 }),
      machine: fc.option(some),
    },
    about: fc.constantFrom({ garment: "MG 001" }, { set: "skirts" }, { material: "net-54" }, {}),
  })
  .map(({ days2, about, asked, minutes, priority, machine, origin, skill, ...approval }) => {
    const [askedOn = null, laterOn = null] = inOrder(days2);
    const [low = 0, likely = 0, high = 0] = minutes.sort((a, b) => a - b);
    return {
      approvals: [{ code: "ash", ...approval, freeUntil: approval.set && "gather", askedOn, expectedOn: laterOn, approvedOn: laterOn }],
      otherWork: [
        {
          ...{ code: "o", title: approval.title, garment: null, set: null, material: null, gates: null, ...about, origin, skill, machine },
          ...{
            minutes: [low, likely, high],
            priority,
            due: "dress",
            waitsFor: "ash",
            shownFor: null,
            askedBy: asked,
            askedOn,
            doneOn: laterOn,
          },
        },
      ],
    };
  });

describe("other work and approvals", () => {
  it("read back as they were written, and are compared row by row", () =>
    fc.assert(
      fc.property(anyWork, (work) => {
        const staging = { ...smallStaging(), ...work };
        const read = readStaging(writeStaging(staging));
        expect(read).toEqual({ ok: true, value: staging });
        expect(compareStagings(smallStaging(), staging).map(({ file, kind, name }) => [file, kind, name])).toEqual([
          ["approvals.csv", "added", "ash"],
          ["other_work.csv", "added", "o"],
        ]);
      }),
      { numRuns: 40 },
    ));
});
