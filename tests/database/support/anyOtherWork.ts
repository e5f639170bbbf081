import * as fc from "fast-check";
import { ORIGINS } from "#lib/approvals/otherWork";
import { plainDate } from "#lib/calendar/days";
import { SKILLS } from "#lib/labour/skills";

const text = fc.string({ unit: "grapheme", maxLength: 12 });
const orNull = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });
const day = orNull(fc.integer({ min: 10_000, max: 40_000 }).map(plainDate));
const three = fc.tuple(fc.nat(9999), fc.nat(9999), fc.nat(9999)).map((minutes) => minutes.sort((a, b) => a - b));

const approval = fc.record({
  ...{ title: text, by: text, days: fc.nat(100), askedOn: day, expectedOn: day, approvedOn: day },
  ...{ set: fc.constantFrom(null, "reeds"), freeUntil: orNull(text), material: fc.constantFrom(null, "material 0") },
});

const about = fc.constantFrom({ garment: "RM 001" }, { set: "wings" }, { material: "material 0" }, {});

const task = fc.record({
  ...{ origin: fc.constantFrom(...ORIGINS), title: text, about, gates: orNull(text), skill: fc.constantFrom(...SKILLS), minutes: three },
  ...{ machine: orNull(text), priority: fc.integer({ min: 1, max: 3 }), due: fc.constantFrom(null, "opening"), askedBy: text },
  ...{ waitsFor: fc.constantFrom(null, "reeds", "approval 0"), shown: fc.boolean(), askedOn: day, doneOn: day },
});

/** Any approvals and other work on the sample's sets and milestones. */
export const anyOtherWork = fc
  .record({ approvals: fc.array(approval, { minLength: 1, maxLength: 3 }), otherWork: fc.array(task, { maxLength: 4 }) })
  .map(({ approvals, otherWork }) => ({
    approvals: approvals.map((one, at) => ({ code: `approval ${at}`, ...one })),
    otherWork: otherWork.map(({ about: of, shown, ...one }, at) => ({
      ...{ code: `task ${at}`, garment: null, set: null, material: null, ...of, ...one },
      shownFor: shown && one.origin === "sample" ? "approval 0" : null,
    })),
  }));
