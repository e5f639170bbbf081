import { beforeAll, describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import type { CutAnswer, CutQuestion } from "#lib/cutting/question";
import type { AuthorizedCompany } from "#prisma/authorized";
import { saveStaging } from "#prisma/stagings/save";
import { keepBudgetShare, loadBudgetShares } from "#prisma/stock/budgetShares";
import { cutsRevision, keepAnswer, loadFoundCuts } from "#prisma/stock/cuttingProofs";
import { loadDyeBook, loadSwatch, writeDyePage } from "#prisma/stock/dyeBook";
import { newCompany, newSupervisor } from "./support/company";
import { serveDatabase } from "./support/serve";
import { sampleStaging } from "./support/staging";

serveDatabase();

let company: AuthorizedCompany;
let stranger: AuthorizedCompany;
let user: string;
beforeAll(async () => {
  company = await newCompany("cloth");
  stranger = await newCompany("strangers");
  user = await newSupervisor(company, "Wren");
  await saveStaging(company, user, sampleStaging);
});

describe("a page of the dye book", () => {
  const page = {
    ...{ production: "reedmere", material: "net-54", lot: "L1", garments: ["RM 001"], colour: "ash", recipe: "2 g to 100 g, 60 °C" },
    ...{ cautions: "", dyedOn: "2027-02-01" as PlainDate },
  };

  it("is kept with its swatch, and seen by the company alone", async () => {
    const swatch = { bytes: new Uint8Array([1, 2, 3]), type: "image/png" as const };
    expect(await writeDyePage(company, { ...page, swatch, user })).toBeNull();
    const [kept] = await loadDyeBook(company);
    expect(kept).toMatchObject({ ...page, production: "reedmere", by: "Wren", hasSwatch: true });
    expect([...((await loadSwatch(company, kept?.code ?? ""))?.bytes ?? [])]).toEqual([1, 2, 3]);
    expect(await loadSwatch(stranger, kept?.code ?? "")).toBeNull();
    expect(await loadDyeBook(stranger)).toEqual([]);
  });

  it("is refused for a lot of another material, or what the company has not", async () => {
    expect(await writeDyePage(company, { ...page, material: "elastic", swatch: null, user })).toBe("lot");
    expect(await writeDyePage(company, { ...page, material: "gold", swatch: null, user })).toBe("material");
    expect(await writeDyePage(stranger, { ...page, swatch: null, user: null })).toBe("production");
  });
});

describe("a budget of a kind", () => {
  const share = { production: "reedmere", category: "net" as const, detail: "Net" };

  it("is kept, changed and taken out, within its company", async () => {
    await keepBudgetShare(company, user, { ...share, amount: 5000 });
    await keepBudgetShare(company, user, { ...share, amount: 7000 });
    expect([...(await loadBudgetShares(company, "reedmere"))]).toEqual([["net", 7000]]);
    expect(await keepBudgetShare(stranger, null, { ...share, amount: 1 })).toBe(false);
    await keepBudgetShare(company, user, { ...share, amount: null });
    expect([...(await loadBudgetShares(company, "reedmere"))]).toEqual([]);
  });
});

describe("an answer of a cutting search", () => {
  const question: CutQuestion = { kind: "stocks", stock: 100, lengths: [[50, 4]] };
  const answer = (used: number, bound: number): CutAnswer => ({
    kind: "stocks",
    used,
    bound,
    patterns: [{ count: used, cuts: [[50, 2]] }],
  });

  it("is found by its question again, and a worse one never takes its place", async () => {
    const before = await cutsRevision(company);
    await keepAnswer(company, question, answer(3, 2), false);
    await keepAnswer(company, question, answer(2, 2), true);
    await keepAnswer(company, question, answer(3, 1), false);
    const cuts = await loadFoundCuts(company);
    expect(cuts.found(question)).toEqual(answer(2, 2));
    expect(cuts.isEnded(question)).toBe(true);
    expect(cuts.found({ ...question, stock: 99 })).toBeNull();
    expect(await cutsRevision(company)).not.toBe(before);
    expect((await loadFoundCuts(stranger)).found(question)).toBeNull();
  });
});
