import { beforeAll, describe, expect, it } from "vitest";
import type { PlainDate } from "#lib/calendar/plainDate";
import { changesBetween } from "#lib/editing/changesBetween";
import { withAlteration } from "#lib/fittings/alteration";
import { failed, ok } from "#lib/result";
import { smallStaging } from "#lib/staging/fixtures";
import { readAudit } from "#prisma/audit";
import type { AuthorizedCompany } from "#prisma/authorized";
import { database } from "#prisma/client";
import { takeBack } from "#prisma/editing/takeBack";
import { addAnswer, listAnswers } from "#prisma/fittings/answers";
import { addMark, addMarkWithWork, dropMark, listMarks } from "#prisma/fittings/marks";
import type { Hand } from "#prisma/inProduction";
import { addNote, changeNote, listNotes } from "#prisma/notes/notes";
import { addPhoto, dropPhoto, findPhoto, listPhotos } from "#prisma/photos/photos";
import { loadStaging } from "#prisma/stagings/load";
import { saveStaging } from "#prisma/stagings/save";
import { dropView, keepView, listViews } from "#prisma/views/views";
import { newCompany, newSupervisor } from "./support/company";
import { serveDatabase } from "./support/serve";

serveDatabase();

const staged = smallStaging();
const PRODUCTION = staged.production.code;
const GARMENT = `${staged.production.prefix} 001`;
const on = "2027-02-01" as PlainDate;

const handIn = async (code: string): Promise<Hand> => {
  const company = await newCompany(code);
  const user = await newSupervisor(company, code);
  const saved = await saveStaging(company, user, staged);
  if (!saved.ok) throw new Error("not saved");
  return { company, user, production: PRODUCTION };
};

let hand: Hand;
let second: Hand;
let stranger: Hand;
beforeAll(async () => {
  hand = await handIn("records");
  second = { ...hand, user: await newSupervisor(hand.company, "records2") };
  stranger = await handIn("strangers");
});

const [performer] = staged.performers;
const at = { garment: GARMENT, fitting: "first", performer: performer!.code };

describe("a note", () => {
  it("is changed and taken away by who wrote it, at the version it was read, and by nobody else", async () => {
    await addNote(hand, GARMENT, "Mind the hoop.");
    const [note] = await listNotes(hand.company, PRODUCTION, GARMENT);
    expect(note).toMatchObject({ text: "Mind the hoop.", user: hand.user, who: "records" });
    expect(await changeNote(second, note!, "Mine now.")).toBe(false);
    expect(await changeNote(stranger, note!, "Mine now.")).toBe(false);
    expect(await changeNote(hand, note!, "Mind the hoop at 8.")).toBe(true);
    expect(await changeNote(hand, note!, "An older reading.")).toBe(false);
    const [changed] = await listNotes(hand.company, PRODUCTION, GARMENT);
    expect(changed?.text).toBe("Mind the hoop at 8.");
    expect(await changeNote(hand, changed!, "")).toBe(true);
    expect(await listNotes(hand.company, PRODUCTION, GARMENT)).toEqual([]);
    expect(await listNotes(stranger.company, PRODUCTION, GARMENT)).toEqual([]);
  });
});

describe("a view", () => {
  it("is seen by who keeps it, and by all once shared; keeping it again replaces it", async () => {
    const names = async ({ company, user }: Hand) =>
      (await listViews(company, user, PRODUCTION, "garments")).map(({ name, query, own }) => [name, query, own]);
    await keepView(hand, "garments", { name: "late", query: "state=late", shared: false });
    expect(await names(second)).toEqual([]);
    await keepView(hand, "garments", { name: "late", query: "state=late&group=set", shared: true });
    expect(await names(hand)).toEqual([["late", "state=late&group=set", true]]);
    expect(await names(second)).toEqual([["late", "state=late&group=set", false]]);
    expect(await names(stranger)).toEqual([]);
    const [view] = await listViews(hand.company, hand.user, PRODUCTION, "garments");
    expect(await dropView(second, view!.id)).toBe(false);
    expect(await dropView(hand, view!.id)).toBe(true);
    expect(await names(hand)).toEqual([]);
  });
});

describe("a photograph", () => {
  const picture = { garment: GARMENT, caption: "back", name: "DSC1.jpg", mediaType: "image/jpeg", bytes: 9, width: 3, height: 4 };
  const kept = { ...picture, sha256: "a".repeat(64), path: `photographs/aa/${"a".repeat(64)}` };

  it("is found in its own company only; its file goes with the last row that keeps it", async () => {
    await addPhoto(hand, kept);
    await addPhoto(second, kept);
    const photos = await listPhotos(hand.company, PRODUCTION, GARMENT);
    expect(photos).toHaveLength(2);
    const [newest, oldest] = photos;
    expect(await findPhoto(hand.company, PRODUCTION, newest!.id)).toEqual({ path: kept.path });
    expect(await findPhoto(stranger.company, PRODUCTION, newest!.id)).toBeNull();
    expect(await dropPhoto(stranger, newest!.id, false)).toEqual({ gone: false, path: null });
    expect(await dropPhoto(hand, newest!.id, true)).toEqual({ gone: false, path: null });
    expect(await dropPhoto(hand, newest!.id, false)).toEqual({ gone: true, path: null });
    expect(await dropPhoto(hand, oldest!.id, true)).toEqual({ gone: true, path: kept.path });
  });
});

describe("a mark of a fitting", () => {
  const work = (company: AuthorizedCompany) =>
    loadStaging(company, PRODUCTION).then((loaded) => loaded!.staging.otherWork.map(({ code }) => code));
  const mark = { ...at, place: "left-shoulder", finding: "alter", text: "up half an inch" } as const;

  it("becomes work in the same moment, which is taken back by the history", async () => {
    const before = await work(hand.company);
    const kept = await addMarkWithWork(hand, mark, (staging) => {
      const { code, title, next } = withAlteration(staging, { ...mark, skill: null, minutes: null, askedBy: "Wren", askedOn: on });
      return ok({ code, title, changes: changesBetween(staging, next) });
    });
    if (!kept.ok) throw new Error("not kept");
    const [listed] = await listMarks(hand.company, PRODUCTION, [GARMENT]);
    expect(await work(hand.company)).toEqual([...before, listed!.task]);
    expect((await takeBack(hand.company, hand.user, PRODUCTION, { what: { id: kept.value.id! }, may: () => true })).ok).toBe(true);
    expect(await work(hand.company)).toEqual(before);
    expect(await dropMark(hand, listed!.id)).toBe(true);
    expect(await dropMark(hand, listed!.id)).toBe(false);
  });

  it("is not written when its work is refused", async () => {
    expect((await addMarkWithWork(hand, mark, () => failed({ kind: "said" as const }))).ok).toBe(false);
    expect(await listMarks(hand.company, PRODUCTION, [GARMENT])).toEqual([]);
  });

  it("that asks for nothing is only written down", async () => {
    await addMark(hand, { ...mark, finding: "fits", text: "" });
    expect(await listMarks(hand.company, PRODUCTION, [GARMENT])).toMatchObject([{ finding: "fits", task: null, who: "records" }]);
    expect(await listMarks(stranger.company, PRODUCTION, [GARMENT])).toEqual([]);
  });
});

describe("an answer", () => {
  it("stands above older ones, and each is written down in the history", async () => {
    const signed = { fit: true, movement: false, look: false };
    await addAnswer(hand, { ...at, ...signed, answer: "did not come", on, note: "" });
    await addAnswer(second, { ...at, ...signed, answer: "done", on, note: "good" });
    expect((await listAnswers(hand.company, PRODUCTION)).map(({ answer, who }) => [answer, who])).toEqual([
      ["done", "records2"],
      ["did not come", "records"],
    ]);
    const { id } = await database().production.findFirstOrThrow({ where: { companyId: hand.company } });
    expect((await readAudit(hand.company, id)).filter(({ action }) => action === "fitting answered")).toHaveLength(2);
  });
});
