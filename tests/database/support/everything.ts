import type { AuthorizedCompany } from "#prisma/authorized";
import { database } from "#prisma/client";
import { savePlan } from "#prisma/plans/save";
import { saveStaging } from "#prisma/stagings/save";
import { newCompany, newSupervisor } from "./company";
import { samplePlan } from "./plan";
import { shelfAndOrders } from "./shelfAndOrders";
import { sampleStaging } from "./staging";

/** A company with at least one row in every table. */
export async function everything(code: string): Promise<AuthorizedCompany> {
  const companyId = await newCompany(code);
  const byId = await newSupervisor(companyId, code);
  const saved = await saveStaging(companyId, byId, sampleStaging);
  if (!saved.ok) throw new Error("not saved");
  const { productionId, workroomId } = saved.value;
  const planId = await savePlan(companyId, { productionId, workroomId, user: byId, name: "plan" }, samplePlan);
  const db = database();
  const of = { companyId, productionId };
  await db.planRun.create({ data: { ...of, workroomId, planId, state: "queued", seed: 1, rounds: 2 } });
  await db.remedyRun.create({ data: { ...of, planId, state: "queued", asked: [] } });
  const { id: garmentId } = await db.garment.findFirstOrThrow({ where: { companyId } });
  const { id: pieceId } = await db.piece.findFirstOrThrow({ where: { companyId } });
  const { id: useId } = await db.garmentUse.create({ data: { ...of, garmentId, pieceId, ordinal: 1, prototype: true } });
  const { castId, placeId, sizeGroupId } = await db.castPlace.findFirstOrThrow({ where: { companyId } });
  await db.garmentWearer.create({ data: { companyId, useId, castId, placeId, sizeGroupId, position: 0, standing: "cast" } });
  const minutes = { lowMinutes: 10, likelyMinutes: 20, highMinutes: 30 };
  const { id: taskId } = await db.task.create({
    data: { ...of, ...minutes, key: "hem", origin: "by hand", name: "Hem", skill: "hand", state: "open" },
  });
  await db.taskGarment.create({ data: { companyId, taskId, useId } });
  const { id: makerId } = await db.maker.findFirstOrThrow({ where: { companyId } });
  const date = new Date("2027-02-01T00:00:00Z");
  await db.workedMinutes.create({ data: { companyId, taskId, makerId, date, minutes: 25, note: "" } });
  const { id: performerId } = await db.performer.findFirstOrThrow({ where: { companyId } });
  const { id: roomId } = await db.machine.findFirstOrThrow({ where: { companyId, kind: "fitting room" } });
  const { id: visitId } = await db.visit.create({
    data: { ...of, performerId, fitterId: makerId, roomId, date, fromMinute: 600, toMinute: 615, state: "asked" },
  });
  await db.fitting.create({ data: { companyId, visitId, useId, kind: "first", note: "" } });
  await shelfAndOrders({ ...of, byId });
  await db.note.create({ data: { ...of, garmentId, byId, text: "Mind the tip." } });
  const edit = { ...of, byId, title: "Wings", changes: [{ file: "pieces.csv" }] };
  const { id: takesBackId } = await db.edit.create({ data: { ...edit, kind: "do" } });
  await db.edit.create({ data: { ...edit, kind: "undo", takesBackId } });
  await db.file.create({ data: { ...of, byId, name: "wing.png", mediaType: "image/png", bytes: 3, sha256: "0".repeat(64), path: "wing" } });
  await db.handPin.create({ data: { ...of, byId, key: "RM 001/cut", makers: ["bel"], starts: 30_000_000 } });
  await db.savedView.create({ data: { ...of, byId, room: "garments", name: "late tutus", query: "state=late" } });
  const fitted = { ...of, performerId, byId, garmentNumber: "RM 001", fitting: "first" };
  const content = { fit: true, movement: true, look: false };
  await db.fittingAnswer.create({ data: { ...fitted, ...content, answer: "again", on: date, note: "" } });
  await db.fittingMark.create({ data: { ...fitted, place: "back waist", finding: "note", text: "Slips." } });
  return companyId;
}
