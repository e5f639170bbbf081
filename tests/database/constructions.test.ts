import { beforeEach, describe, expect, it } from "vitest";
import type { Construction } from "#lib/constructions/construction";
import { smallStaging } from "#lib/staging/fixtures";
import { readAudit } from "#prisma/audit";
import type { AuthorizedCompany } from "#prisma/authorized";
import { addConstruction } from "#prisma/editing/addConstruction";
import { takeBack } from "#prisma/editing/takeBack";
import { loadStaging } from "#prisma/stagings/load";
import { saveStaging } from "#prisma/stagings/save";
import { newCompany, newSupervisor } from "./support/company";
import { serveDatabase } from "./support/serve";

serveDatabase();

const small = smallStaging();
const made = small.pieces.find((piece) => piece.construction !== null)!;
const old = small.constructions.find(({ code }) => code === made.construction)!;
const slower: Construction = {
  ...old,
  version: old.version + 1,
  operations: old.operations.map((one) => ({ ...one, setupMinutes: [90, 95, 99] })),
};

let company: AuthorizedCompany;
let wren: string;
let count = 0;
beforeEach(async () => {
  count += 1;
  company = await newCompany(`constructions ${count}`);
  wren = await newSupervisor(company, `Wren${count}`);
  await saveStaging(company, wren, small);
});

const now = async () => {
  const found = await loadStaging(company, "mg");
  if (!found) throw new Error("gone");
  return found;
};
const versionOf = (staging: typeof small) => staging.pieces.find(({ code }) => code === made.code)!.version;

describe("a further version of a construction", () => {
  it("is kept with the old one, which its pieces keep to when none is moved", async () => {
    const before = await now();
    const added = await addConstruction(company, wren, "mg", slower, "none");
    expect(added.ok).toBe(true);
    const { staging, inputRevision, productionId } = await now();
    expect(inputRevision).toBe(before.inputRevision + 1);
    expect(staging.constructions).toEqual([...before.staging.constructions, slower]);
    expect(versionOf(staging)).toBe(old.version);
    expect((await readAudit(company, productionId)).some(({ action }) => action === "construction added")).toBe(true);
  });

  it("takes the pieces along when all are moved, and that is taken back without losing the version", async () => {
    await addConstruction(company, wren, "mg", slower, "none");
    const newer = { ...slower, version: slower.version + 1 };
    const added = await addConstruction(company, wren, "mg", newer, "all");
    expect(added).toMatchObject({ ok: true });
    expect(versionOf((await now()).staging)).toBeNull();
    await takeBack(company, wren, "mg", { what: "last", may: () => true });
    const { staging } = await now();
    expect(versionOf(staging)).toBe(old.version);
    expect(staging.constructions).toContainEqual(newer);
  });

  it("is refused, and nothing written, when there is one as new already, or the company has no such production", async () => {
    const before = await now();
    expect(await addConstruction(company, wren, "mg", { ...slower, version: old.version }, "all")).toMatchObject({
      ok: false,
      error: { kind: "problem" },
    });
    expect(await now()).toEqual(before);
    const other = await newCompany(`others ${count}`);
    expect(await addConstruction(other, null, "mg", slower, "all")).toEqual({ ok: false, error: { kind: "no production" } });
  });
});
