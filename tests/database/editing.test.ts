import { beforeEach, describe, expect, it } from "vitest";
import { changesBetween } from "#lib/editing/changesBetween";
import type { Edit, RowChange } from "#lib/editing/edit";
import { rowOf } from "#lib/editing/rows";
import { ok } from "#lib/result";
import { smallStaging } from "#lib/staging/fixtures";
import type { Staging } from "#lib/staging/staging";
import type { AuthorizedCompany } from "#prisma/authorized";
import { database } from "#prisma/client";
import { keepEdit } from "#prisma/editing/keepEdit";
import { listEdits } from "#prisma/editing/listEdits";
import { type ToTakeBack, takeBack } from "#prisma/editing/takeBack";
import { loadStaging } from "#prisma/stagings/load";
import { saveStaging } from "#prisma/stagings/save";
import { newCompany, newSupervisor } from "./support/company";
import { serveDatabase } from "./support/serve";

serveDatabase();

const editable = smallStaging();

let company: AuthorizedCompany;
let wren: string;
let lark: string;
let count = 0;
beforeEach(async () => {
  count += 1;
  company = await newCompany(`editors ${count}`);
  wren = await newSupervisor(company, `Wren${count}`);
  lark = await newSupervisor(company, `Lark${count}`);
  await saveStaging(company, wren, editable);
});

const loaded = async (code = "mg") => {
  const found = await loadStaging(company, code);
  if (!found) throw new Error("gone");
  return found;
};
const change = (staging: Staging, file: string, name: string, cells: Readonly<Record<string, string>>): RowChange => {
  const before = rowOf(staging, file, name);
  return { file, before, after: { ...before, ...cells } };
};
const edit = (title: string, ...changes: readonly RowChange[]): Edit => ({ title, changes });
const back = (user: string, what: ToTakeBack, changes?: readonly RowChange[]) =>
  takeBack(company, user, "mg", { what, may: () => true, ...(changes ? { changes } : {}) });

const paced = edit("Pace", change(editable, "makers.csv", "orla", { productive: "80%" }));
const traded = edit("Trade", change(editable, "makers.csv", "orla", { trade: "cutter" }));

describe("an edit", () => {
  it("changes the rows it names, raises the revision, and is written down", async () => {
    const before = await loaded();
    const kept = await keepEdit(company, wren, "mg", paced);
    expect(kept).toMatchObject({ ok: true, value: { inputRevision: before.inputRevision + 1 } });
    const after = await loaded();
    expect(after.inputRevision).toBe(before.inputRevision + 1);
    expect(after.staging).toEqual({ ...before.staging, makers: [{ ...before.staging.makers[0], productive: 800 }] });
    expect(await listEdits(company, "mg", 9)).toMatchObject([{ who: `Wren${count}`, title: "Pace", kind: "do", takenBack: false }]);
    expect(await database().auditEntry.findFirst({ where: { companyId: company, subject: "Edit" } })).toMatchObject({
      action: "edited",
      summary: "Pace",
      byId: wren,
    });
  });

  it("of every file is kept exactly, and taken back exactly", async () => {
    const { staging } = await loaded();
    const next: Staging = {
      ...staging,
      production: { ...staging.production, title: "Other", zone: "Europe/Paris", budget: null },
      milestones: [...staging.milestones].reverse(),
      sizeGroups: [...staging.sizeGroups, { code: "W12", name: "Women large" }],
      performers: staging.performers.map((one) => ({ ...one, sizeGroup: "W12" })).slice(0, 2),
      measurements: staging.measurements.slice(1, 2),
      roles: [{ ...staging.roles[0]!, places: 1 }, staging.roles[1]!],
      casting: staging.casting.filter(({ place }) => place === 1).map((one) => ({ ...one, sizeGroup: "M40" })),
      scenes: staging.scenes.slice(0, 1),
      appearances: [...staging.appearances].reverse(),
      sets: [],
      pieces: [...staging.pieces].reverse().map((piece) => ({ ...piece, set: null, stock: null, source: "buy" as const })),
      makers: [...staging.makers.map((maker) => ({ ...maker, overtime: [], paceFrom: [] })), { ...staging.makers[0]!, code: "iri" }],
      absences: [{ ...staging.absences[1]!, maker: "iri" }],
      machines: staging.machines.map((machine) => ({ ...machine, count: 2 })),
      materials: [...staging.materials].reverse(),
      offers: staging.offers.slice(1),
      lots: staging.lots.slice(1),
      stock: [],
      calls: [],
    };
    const kept = await keepEdit(company, wren, "mg", (now) => ok(edit("All", ...changesBetween(now, next))));
    expect(kept.ok).toBe(true);
    expect((await loaded()).staging).toEqual(next);
    expect((await back(wren, "last")).ok).toBe(true);
    expect((await loaded()).staging).toEqual(staging);
  });

  it("with a fault writes nothing", async () => {
    const before = await loaded();
    const refused = await keepEdit(
      company,
      wren,
      "mg",
      edit(
        "Wrong",
        change(editable, "makers.csv", "orla", { skills: "knitting=1%" }),
        change(editable, "roles.csv", "snow", { name: "Flakes" }),
      ),
    );
    expect(refused).toMatchObject({ ok: false, error: { kind: "faults", faults: [{ file: "makers.csv", row: 2, column: "skills" }] } });
    expect(await loaded()).toEqual(before);
    expect(await listEdits(company, "mg", 9)).toEqual([]);
  });

  it("that changes nothing writes nothing", async () => {
    const before = await loaded();
    const same = edit("Same", change(editable, "makers.csv", "orla", { productive: "85 %" }));
    expect(await keepEdit(company, wren, "mg", same)).toMatchObject({ ok: true, value: { id: null } });
    expect(await loaded()).toEqual(before);
  });

  it("of a row that another changed meanwhile is refused with theirs and mine", async () => {
    const [one, other] = await Promise.all([keepEdit(company, wren, "mg", paced), keepEdit(company, lark, "mg", traded)]);
    expect([one.ok, other.ok].sort()).toEqual([false, true]);
    const [refused, mine, theirs] = one.ok ? [other, traded, { productive: "80%" }] : [one, paced, { trade: "cutter" }];
    expect(refused).toMatchObject({ ok: false, error: { kind: "conflict", conflicts: [{ mine: mine.changes[0], theirs }] } });
    expect((await listEdits(company, "mg", 9)).length).toBe(1);
  });

  it("from another company finds no production", async () => {
    const stranger = await newCompany(`strangers ${count}`);
    expect(await keepEdit(stranger, null, "mg", paced)).toEqual({ ok: false, error: { kind: "no production" } });
    expect(await listEdits(stranger, "mg", 9)).toEqual([]);
  });

  it("makes the plans of other productions stale only where they share what was changed", async () => {
    await saveStaging(company, wren, { ...editable, production: { ...editable.production, code: "second" } });
    const revisions = async () => [(await loaded()).inputRevision, (await loaded("second")).inputRevision];
    const [first, second] = (await revisions()) as [number, number];
    await keepEdit(company, wren, "mg", edit("Role", change(editable, "roles.csv", "snow", { name: "Flakes" })));
    expect(await revisions()).toEqual([first + 1, second]);
    await keepEdit(company, wren, "mg", paced);
    expect(await revisions()).toEqual([first + 2, second + 1]);
  });

  it("takes a row of a register out even beside another production", async () => {
    await saveStaging(company, wren, { ...editable, production: { ...editable.production, code: "second" } });
    const gone = edit("Lot", { file: "lots.csv", before: rowOf(editable, "lots.csv", "L1"), after: null });
    expect((await keepEdit(company, wren, "mg", gone)).ok).toBe(true);
    expect((await loaded()).staging.lots.map(({ code }) => code)).toEqual(["L2"]);
    expect((await loaded("second")).staging.lots.map(({ code }) => code)).toEqual(["L2"]);
  });
});

describe("taking back", () => {
  it("goes back step by step and forth again, and forgets what was taken back once something new is done", async () => {
    await keepEdit(company, wren, "mg", paced);
    await keepEdit(company, wren, "mg", edit("Role", change(editable, "roles.csv", "snow", { name: "Flakes" })));
    const done = (await loaded()).staging;
    expect(await back(wren, "last")).toMatchObject({ ok: true, value: { title: "Role", kind: "undo" } });
    expect(await back(wren, "last")).toMatchObject({ ok: true, value: { title: "Pace", kind: "undo" } });
    expect((await loaded()).staging).toEqual(editable);
    expect(await back(wren, "last")).toEqual({ ok: false, error: { kind: "nothing" } });
    expect(await back(wren, "last taken back")).toMatchObject({ ok: true, value: { title: "Pace", kind: "redo" } });
    expect(await back(wren, "last taken back")).toMatchObject({ ok: true, value: { title: "Role" } });
    expect(await back(wren, "last taken back")).toEqual({ ok: false, error: { kind: "nothing" } });
    expect((await loaded()).staging).toEqual(done);
    await back(wren, "last");
    await keepEdit(company, wren, "mg", edit("Queen", change(editable, "roles.csv", "queen", { name: "Frost" })));
    expect(await back(wren, "last taken back")).toEqual({ ok: false, error: { kind: "nothing" } });
  });

  it("is of one's own last edit, not of another's", async () => {
    await keepEdit(company, wren, "mg", paced);
    await keepEdit(company, lark, "mg", edit("Role", change(editable, "roles.csv", "snow", { name: "Flakes" })));
    expect(await back(wren, "last")).toMatchObject({ ok: true, value: { title: "Pace" } });
    expect((await loaded()).staging.roles[0]?.name).toBe("Flakes");
  });

  it("is a conflict where another has changed the row since, and nothing of either is lost", async () => {
    await keepEdit(company, wren, "mg", paced);
    const { staging } = await loaded();
    await keepEdit(company, lark, "mg", edit("Trade", change(staging, "makers.csv", "orla", { trade: "cutter" })));
    const refused = await back(wren, "last");
    expect(refused).toMatchObject({
      ok: false,
      error: { kind: "conflict", conflicts: [{ theirs: { trade: "cutter", productive: "80%" } }] },
    });
    expect((await loaded()).staging.makers[0]).toMatchObject({ trade: "cutter", productive: 800 });
    const seen = rowOf((await loaded()).staging, "makers.csv", "orla");
    const chosen = [{ file: "makers.csv", before: seen, after: { ...seen, productive: "85%" } }];
    expect(await back(wren, "last", chosen)).toMatchObject({ ok: true, value: { title: "Pace" } });
    expect((await loaded()).staging.makers[0]).toMatchObject({ trade: "cutter", productive: 850 });
  });

  it("of one edit happens once, and only in one's own company", async () => {
    const kept = await keepEdit(company, wren, "mg", paced);
    const id = kept.ok ? kept.value.id! : "";
    const stranger = await newCompany(`thieves ${count}`);
    const thief = await newSupervisor(stranger, `Magpie${count}`);
    expect(await takeBack(stranger, thief, "mg", { what: { id }, may: () => true })).toEqual({ ok: false, error: { kind: "nothing" } });
    expect(await takeBack(company, lark, "mg", { what: { id }, may: () => false })).toEqual({ ok: false, error: { kind: "not yours" } });
    const both = await Promise.all([back(wren, { id }), back(lark, { id })]);
    expect(both.map((one) => one.ok).sort()).toEqual([false, true]);
    expect((await listEdits(company, "mg", 9)).map(({ kind, takenBack }) => [kind, takenBack])).toEqual([
      ["undo", false],
      ["do", true],
    ]);
  });
});
