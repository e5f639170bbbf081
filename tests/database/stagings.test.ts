import * as fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import type { Staging } from "#lib/staging/staging";
import type { AuthorizedCompany } from "#prisma/authorized";
import { database } from "#prisma/client";
import { listProductions } from "#prisma/stagings/list";
import { loadStaging } from "#prisma/stagings/load";
import { saveStaging } from "#prisma/stagings/save";
import { trySaving } from "#prisma/stagings/trySaving";
import { anyStaging } from "./support/anyStaging";
import { newCompany, newSupervisor } from "./support/company";
import { serveDatabase } from "./support/serve";
import { sampleStaging } from "./support/staging";

serveDatabase();

let company: AuthorizedCompany;
let user: string;
beforeAll(async () => {
  company = await newCompany("round");
  user = await newSupervisor(company, "Wren");
});

const loaded = async (code = "reedmere"): Promise<Staging> => {
  const found = await loadStaging(company, code);
  if (!found) throw new Error(`${code} was not found`);
  return found.staging;
};

const smaller: Staging = {
  ...sampleStaging,
  sizeGroups: sampleStaging.sizeGroups.slice(0, 1),
  performers: sampleStaging.performers.slice(1),
  measurements: sampleStaging.measurements.slice(0, 1),
  roles: [{ ...sampleStaging.roles[1], places: 2 }],
  casting: [{ ...sampleStaging.casting[3], place: 2 }],
  scenes: sampleStaging.scenes.slice(0, 1),
  appearances: sampleStaging.appearances.slice(1),
  costumes: sampleStaging.costumes.slice(0, 1),
  sets: sampleStaging.sets.slice(0, 1),
  pieces: [{ ...sampleStaging.pieces[0], due: "opening", parameters: { panels: "8" }, materials: {} }],
  milestones: sampleStaging.milestones.slice(1),
  makers: sampleStaging.makers.slice(1),
  absences: [],
  machines: sampleStaging.machines.slice(1),
  calls: [],
  materials: sampleStaging.materials.slice(0, 1),
  lots: sampleStaging.lots.slice(0, 1),
  approvals: sampleStaging.approvals.slice(1),
  otherWork: [{ ...sampleStaging.otherWork[2], title: "Mend both tips", waitsFor: null, doneOn: sampleStaging.milestones[1].date }],
  stock: [],
};

describe("a staging", () => {
  it("comes back exactly as it was saved", async () => {
    const saved = await saveStaging(company, user, sampleStaging);
    expect(saved).toMatchObject({ ok: true, value: { created: true, inputRevision: 1 } });
    expect(await loaded()).toEqual(sampleStaging);
  });

  it("of any content comes back exactly, whatever was there before", async () => {
    const any = await newCompany("any");
    await fc.assert(
      fc.asyncProperty(anyStaging, async (staging) => {
        expect((await saveStaging(any, null, staging)).ok).toBe(true);
        expect((await loadStaging(any, staging.production.code))?.staging).toEqual(staging);
      }),
      { numRuns: 20 },
    );
  });

  it("is not there for another company, nor under another code", async () => {
    expect(await loadStaging(await newCompany("stranger"), "reedmere")).toBeNull();
    expect(await loadStaging(company, "nothing")).toBeNull();
  });

  it("saved again unchanged keeps every id and version, and counts its revision up", async () => {
    const rows = () => database().piece.findMany({ where: { companyId: company }, orderBy: { code: "asc" } });
    const before = await rows();
    const saved = await saveStaging(company, null, sampleStaging);
    expect(saved).toMatchObject({ ok: true, value: { created: false, inputRevision: 2 } });
    expect(await rows()).toEqual(before);
    expect(await loaded()).toEqual(sampleStaging);
  });

  it("replaced by a smaller one comes back as the smaller one, and what stays keeps its id", async () => {
    const before = await database().piece.findFirstOrThrow({ where: { companyId: company, code: "reed-skirt" } });
    expect((await saveStaging(company, user, smaller)).ok).toBe(true);
    expect(await loaded()).toEqual(smaller);
    const after = await database().piece.findFirstOrThrow({ where: { companyId: company, code: "reed-skirt" } });
    expect(after).toMatchObject({ id: before.id, version: before.version + 1 });
  });

  it("comes back whole when the larger one is saved again", async () => {
    expect((await saveStaging(company, user, sampleStaging)).ok).toBe(true);
    expect(await loaded()).toEqual(sampleStaging);
  });

  it("with another content under a kept version of a construction is refused, and nothing is written", async () => {
    const [skirt] = sampleStaging.constructions;
    const changed = { ...sampleStaging, constructions: [{ ...skirt, source: "something else" }], calls: [] };
    const saved = await saveStaging(company, user, changed);
    expect(saved).toMatchObject({ ok: false, error: [{ file: "constructions/plain-skirt.json", column: "version" }] });
    expect(await loaded()).toEqual(sampleStaging);
    const higher = { ...sampleStaging, constructions: [{ ...skirt, source: "something else", version: 3 }] };
    expect((await saveStaging(company, user, higher)).ok).toBe(true);
    expect(await loaded()).toEqual(higher);
    expect((await saveStaging(company, user, sampleStaging)).ok).toBe(true);
  });

  it("that moves a piece to a newer version keeps the older one as it was", async () => {
    const [skirt] = sampleStaging.constructions;
    const [reeds, ...others] = sampleStaging.pieces;
    const both = [skirt, { ...skirt, version: 4, source: "longer skirts" }];
    const moved = { ...sampleStaging, constructions: both, pieces: [{ ...reeds, version: null }, ...others] };
    expect((await saveStaging(company, user, moved)).ok).toBe(true);
    expect(await loaded()).toEqual(moved);
    expect((await saveStaging(company, user, sampleStaging)).ok).toBe(true);
    expect(await loaded()).toEqual(sampleStaging);
  });

  it("beside another production takes nothing away from the company's registers, and makes the other's plan stale", async () => {
    const before = await loadStaging(company, "reedmere");
    const other = { ...smaller, production: { ...smaller.production, code: "second", title: "Second" } };
    expect((await saveStaging(company, user, other)).ok).toBe(true);
    const after = await loadStaging(company, "reedmere");
    expect(after?.staging.makers.map((maker) => maker.code).sort()).toEqual(["iri", "tam"]);
    expect(after?.staging.performers).toEqual(expect.arrayContaining([...sampleStaging.performers]));
    expect(after?.staging.pieces).toEqual(sampleStaging.pieces);
    expect(after?.staging.absences).toEqual(sampleStaging.absences);
    expect(after?.inputRevision).toBe((before?.inputRevision ?? 0) + 1);
    expect((await listProductions(company)).map((production) => production.code).sort()).toEqual(["reedmere", "second"]);
  });

  it("gives the whole of the days it calls a performer for, and leaves every other day of the company as it is", async () => {
    const house = await newCompany("called");
    const callsOf = async (code: string) =>
      (await loadStaging(house, code))?.staging.calls
        .map(({ performer, date, from, kind }) => `${performer} ${date} ${from} ${kind}`)
        .sort();
    const [everybody, ost] = sampleStaging.calls;
    await saveStaging(house, null, sampleStaging);
    const before = await callsOf("reedmere");
    const later = "2027-06-01" as typeof ost.date;
    const second = { ...sampleStaging, production: { ...sampleStaging.production, code: "second" } };

    await saveStaging(house, null, { ...second, calls: [{ ...ost, date: later }] });
    expect(await callsOf("reedmere")).toEqual([...(before ?? []), `ost ${later} 570 span`].sort());

    const moved = {
      ...second,
      calls: [
        { ...ost, date: later },
        { ...ost, from: 600 },
      ],
    };
    for (const _ of [1, 2]) await saveStaging(house, null, moved);
    expect(await callsOf("reedmere")).toEqual([`null ${everybody.date} 600 class`, `ost ${ost.date} 600 span`, `ost ${later} 570 span`]);
    expect(await callsOf("second")).toEqual(await callsOf("reedmere"));
  });

  it("tried is what it would be when saved, and leaves everything as it was", async () => {
    const house = await newCompany("tried");
    await saveStaging(house, null, sampleStaging);
    const second = { ...smaller, production: { ...smaller.production, code: "second" } };
    const before = await loadStaging(house, "reedmere");
    const would = await trySaving(house, second);
    expect(await loadStaging(house, "second")).toBeNull();
    expect(await loadStaging(house, "reedmere")).toEqual(before);
    await saveStaging(house, null, second);
    expect(would).toEqual({ ok: true, value: (await loadStaging(house, "second"))?.staging });
    const [skirt] = sampleStaging.constructions;
    const refused = await trySaving(house, { ...second, constructions: [{ ...skirt, source: "something else" }] });
    expect(refused).toMatchObject({ ok: false, error: [{ column: "version" }] });
  });

  it("saved by two people at once is as one of them saved it", async () => {
    const one = await newCompany("contested");
    const saves = await Promise.all([saveStaging(one, null, sampleStaging), saveStaging(one, null, smaller)]);
    expect(saves.every((save) => save.ok)).toBe(true);
    const found = await loadStaging(one, "reedmere");
    expect([sampleStaging, smaller]).toContainEqual(found?.staging);
    expect(found?.inputRevision).toBe(2);
  });
});

describe("the list of productions", () => {
  it("gives each with its milestones in order of time", async () => {
    const [second] = (await listProductions(company)).filter((production) => production.code === "reedmere");
    expect(second).toEqual({
      code: "reedmere",
      title: "Reedmere",
      subtitle: "",
      starts: "2027-01-18",
      milestones: [
        { code: "parade", kind: "dress parade", name: "Dress parade", date: "2027-02-26" },
        { code: "opening", kind: "opening", name: "Opening", date: "2027-03-05" },
      ],
    });
  });
});
