import type { Staging } from "#lib/staging/staging";
import { insertRows, upsertRows } from "../bulk";
import { type Ids, need, needOrNull, newId } from "../ids";
import { idsByCode, retireMissing, type Saving } from "./saving";

export interface PeopleIds {
  readonly sizeGroups: Ids;
  readonly performers: Ids;
}

/** Size groups, performers, their measurement sheets and calls. */
export async function savePeople(saving: Saving, staging: Staging): Promise<PeopleIds> {
  const { tx, companyId } = saving;
  await upsertRows(
    tx,
    "SizeGroup",
    ["code"],
    staging.sizeGroups.map(({ code, name }, position) => ({ companyId, code, name, position, retiredAt: null, version: 1 })),
  );
  const sizeGroups = idsByCode(await tx.sizeGroup.findMany({ where: { companyId }, select: { id: true, code: true } }));
  await upsertRows(
    tx,
    "Performer",
    ["code"],
    staging.performers.map((performer, position) => ({
      companyId,
      code: performer.code,
      name: performer.name,
      sizeGroupId: need(sizeGroups, performer.sizeGroup),
      minor: performer.minor,
      position,
      retiredAt: null,
      version: 1,
    })),
  );
  const performers = idsByCode(await tx.performer.findMany({ where: { companyId }, select: { id: true, code: true } }));
  await retireMissing(
    saving,
    "sizeGroup",
    staging.sizeGroups.map((group) => group.code),
  );
  await retireMissing(
    saving,
    "performer",
    staging.performers.map((performer) => performer.code),
  );
  const ids = { sizeGroups, performers };
  await saveSheets(saving, staging, ids);
  await saveCalls(saving, staging, ids);
  return ids;
}

/** The sheets of a body that the staging measures replace those it had. */
async function saveSheets({ tx, companyId, sole }: Saving, staging: Staging, ids: PeopleIds): Promise<void> {
  const sheets = staging.measurements.map((sheet, position) => ({
    id: newId(),
    companyId,
    performerId: "performer" in sheet.of ? need(ids.performers, sheet.of.performer) : null,
    sizeGroupId: "sizeGroup" in sheet.of ? need(ids.sizeGroups, sheet.of.sizeGroup) : null,
    taken: sheet.taken,
    body: sheet.body,
    position,
  }));
  const performerIds = sheets.flatMap((sheet) => sheet.performerId ?? []);
  const sizeGroupIds = sheets.flatMap((sheet) => sheet.sizeGroupId ?? []);
  const replaced = { OR: [{ performerId: { in: performerIds } }, { sizeGroupId: { in: sizeGroupIds } }] };
  await tx.measurementSheet.deleteMany({ where: { companyId, ...(sole ? {} : replaced) } });
  await insertRows(tx, "MeasurementSheet", sheets);
  const values = sheets.flatMap(({ id: sheetId }, at) =>
    Object.entries(staging.measurements[at].values).map(([measurement, length]) => ({ companyId, sheetId, measurement, length })),
  );
  await insertRows(tx, "MeasurementValue", values);
}

/** The days of a performer (or of everybody) that the staging names become as it says; other days keep their calls. */
async function saveCalls({ tx, companyId, sole }: Saving, staging: Staging, ids: PeopleIds): Promise<void> {
  const calls = staging.calls.map((call, position) => ({
    companyId,
    performerId: needOrNull(ids.performers, call.performer),
    date: call.date,
    fromMinute: call.from,
    toMinute: call.to,
    kind: call.kind,
    position,
  }));
  if (sole) await tx.call.deleteMany({ where: { companyId } });
  else {
    const named = JSON.stringify(calls.map(({ performerId, date }) => ({ performer: performerId, day: date })));
    await tx.$executeRaw`
      delete from call using (select distinct performer, day from jsonb_to_recordset(${named}::jsonb) as listed (performer uuid, day date)) named
      where company_id = ${companyId}::uuid and date = day and performer_id is not distinct from performer`;
  }
  await insertRows(tx, "Call", calls);
}
