import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import type { AuthorizedCompany } from "#prisma/authorized";
import { database } from "#prisma/client";
import { type Edit, editRow } from "#prisma/editing";
import { loadStaging } from "#prisma/stagings/load";
import { saveStaging } from "#prisma/stagings/save";
import { newCompany, newSupervisor } from "./support/company";
import { serveDatabase } from "./support/serve";
import { sampleStaging } from "./support/staging";

serveDatabase();

let company: AuthorizedCompany;
let wren: string;
let lark: string;
beforeAll(async () => {
  company = await newCompany("editors");
  wren = await newSupervisor(company, "Wren");
  lark = await newSupervisor(company, "Lark");
  await saveStaging(company, wren, sampleStaging);
});

let edit: Edit<"Piece">;
beforeEach(async () => {
  const { id, version, productionId } = await database().piece.findFirstOrThrow({ where: { companyId: company, code: "reed-skirt" } });
  edit = { table: "Piece", id, version, productionId, changes: { weight: 3 }, detail: "Skirt: weight 3" };
});

describe("an edit", () => {
  it("changes the row, counts its version up, is written down and makes plans stale", async () => {
    const before = await loadStaging(company, "reedmere");
    expect(await editRow(company, wren, edit)).toEqual({ ok: true, value: { version: edit.version + 1 } });
    const after = await loadStaging(company, "reedmere");
    expect(after?.staging.pieces[0].weight).toBe(3);
    expect(after?.inputRevision).toBe((before?.inputRevision ?? 0) + 1);
    expect(await database().auditEntry.count({ where: { companyId: company, subjectId: edit.id, byId: wren } })).toBe(1);
  });

  it("of what somebody else changed meanwhile is refused, with who and when, and changes nothing", async () => {
    const since = Date.now();
    const [one, other] = await Promise.all([
      editRow(company, wren, { ...edit, changes: { weight: 4 } }),
      editRow(company, lark, { ...edit, changes: { weight: 5 } }),
    ]);
    expect([one.ok, other.ok].sort()).toEqual([false, true]);
    const conflict = one.ok ? other : one;
    expect(conflict).toMatchObject({ ok: false, error: { version: edit.version + 1, changedBy: one.ok ? "Wren" : "Lark" } });
    if (!conflict.ok) expect(conflict.error.changedAt?.getTime()).toBeGreaterThanOrEqual(since - 1000);
    const row = await database().piece.findUniqueOrThrow({ where: { id: edit.id } });
    expect(row).toMatchObject({ weight: one.ok ? 4 : 5, version: edit.version + 1 });
  });

  it("of a row that is gone says so", async () => {
    const gone = { ...edit, id: "019a0000-0000-7000-8000-000000000000" };
    expect(await editRow(company, wren, gone)).toEqual({ ok: false, error: { version: null, changedBy: null, changedAt: null } });
  });

  it("from another company finds no row", async () => {
    const stranger = await newCompany("strangers");
    expect(await editRow(stranger, null, edit)).toEqual({ ok: false, error: { version: null, changedBy: null, changedAt: null } });
  });

  it("of a register makes the plans of every production of the company stale", async () => {
    const { id, version } = await database().maker.findFirstOrThrow({ where: { companyId: company, code: "iri" } });
    const before = await loadStaging(company, "reedmere");
    await editRow(company, wren, { table: "Maker", id, version, productionId: null, changes: { productive: 700 }, detail: "Iri: 70%" });
    expect((await loadStaging(company, "reedmere"))?.inputRevision).toBe((before?.inputRevision ?? 0) + 1);
  });
});
