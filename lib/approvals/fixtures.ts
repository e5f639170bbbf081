import type { Need } from "#lib/breakdown/work";
import { level } from "#lib/levelling/level";
import { assemble } from "#lib/planning/assemble";
import { day, garment, maker, operation, set, staging, work } from "#lib/planning/fixtures";
import { prepareWorks } from "#lib/planning/prepare";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Staging } from "#lib/staging/staging";
import type { Approval } from "./approval";
import type { OtherTask } from "./otherWork";

/** Small hand-made values for the tests of this room. */

export const approval = (code: string, changes: Partial<Approval> = {}): Approval => ({
  ...{ code, title: `The ${code}`, by: "designer", days: 0, askedOn: null, expectedOn: null, approvedOn: null },
  ...{ set: null, freeUntil: null, material: null },
  ...changes,
});

export const task = (code: string, changes: Partial<OtherTask> = {}): OtherTask => ({
  ...{ code, origin: "by hand", title: `Do ${code}`, garment: null, set: null, material: null, gates: null, skill: "net" },
  ...{ minutes: [60, 60, 60], machine: null, priority: 2, due: null, waitsFor: null, shownFor: null, askedBy: "" },
  ...{ askedOn: null, doneOn: null },
  ...changes,
});

const after = (on: string) => [{ on, lagMinutes: 0, lagKind: "elapsed" as const }];
const steps = [
  operation("cut", { minutes: [60, 60, 60] }),
  operation("sew", { minutes: [120, 120, 120], waitsFor: after("cut") }),
  operation("hem", { minutes: [60, 60, 60], waitsFor: after("sew") }),
];

const net = (of: string): Need => ({
  ...{ garment: of, role: "net", label: { uk: "Net", us: "Net" }, material: "net", measure: "length", quantity: 1000, cuts: [] },
  ...{ oneLotSet: null, operation: "cut", arithmetic: "" },
});

/** The production's first day, a Monday: all plans of these tests are made on it. */
export const TODAY = day("2027-02-01");

export const members = [1, 2, 3].map((ordinal) => garment(`X ${ordinal}`, { set: "reeds", ordinal, prototype: ordinal === 1 }));
export const works = members.map(({ number }) => ({ ...work(number, steps), needs: [net(number)] }));

/** Three skirts of a set, each cut (60 min), sewn (120) and hemmed (60) by one maker on weekdays from 09:00 to 17:00, with net on the shelf. */
export const skirts = (changes: Partial<Staging> = {}): Staging =>
  staging({
    sets: [set("reeds", { name: "Reed skirts" })],
    makers: [maker("bel")],
    materials: [
      {
        code: "net",
        name: "Net",
        kind: "net",
        measure: "length",
        colour: "",
        width: null,
        cuttable: null,
        shrinkage: 0,
        spare: 0,
        kerf: 0,
        keep: null,
        grain: "fixed",
      },
    ],
    lots: [{ code: "L1", material: "net", dyeLot: "", quantity: 5000, location: "", breadth: null, arrives: null }],
    ...changes,
  });

export const prepareSkirts = (changes: Partial<Staging> = {}, today = TODAY) => prepareWorks(skirts(changes), members, works, { today });

export const planSkirts = (changes: Partial<Staging> = {}, today = TODAY): StagingPlan => {
  const prepared = prepareSkirts(changes, today);
  return assemble(prepared, level(prepared.problem, { seed: 1, rounds: 0, stop: () => false }));
};
