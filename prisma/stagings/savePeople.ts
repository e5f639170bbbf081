import type { Staging } from "#lib/staging/staging";
import { insertRows, upsertRows } from "../bulk";
import { need, needOrNull, newId } from "../ids";
import { changedRows, idsOf, retireMissing, type Saving } from "./saving";

export async function saveSizes(saving: Saving, staging: Staging): Promise<void> {
  const rows = changedRows(saving, staging, "sizeGroups").map(({ row: { code, name }, position }) => ({
    companyId: saving.companyId,
    code,
    name,
    position,
    retiredAt: null,
    version: 1,
  }));
  await upsertRows(saving.tx, "SizeGroup", ["code"], rows);
  await retireMissing(saving, "sizeGroup", staging.sizeGroups);
}

export async function savePerformers(saving: Saving, staging: Staging): Promise<void> {
  const sizeGroups = await idsOf(saving, "sizeGroup");
  await upsertRows(
    saving.tx,
    "Performer",
    ["code"],
    changedRows(saving, staging, "performers").map(({ row: performer, position }) => ({
      companyId: saving.companyId,
      code: performer.code,
      name: performer.name,
      sizeGroupId: need(sizeGroups, performer.sizeGroup),
      minor: performer.minor,
      position,
      retiredAt: null,
      version: 1,
    })),
  );
  await retireMissing(saving, "performer", staging.performers);
}

/** The sheets of a body that the staging measures replace those it had. */
export async function saveMeasurements(saving: Saving, { measurements }: Staging): Promise<void> {
  const { tx, companyId, whole } = saving;
  const performers = await idsOf(saving, "performer");
  const sizeGroups = await idsOf(saving, "sizeGroup");
  const sheets = measurements.map((sheet, position) => ({
    id: newId(),
    companyId,
    performerId: "performer" in sheet.of ? need(performers, sheet.of.performer) : null,
    sizeGroupId: "sizeGroup" in sheet.of ? need(sizeGroups, sheet.of.sizeGroup) : null,
    taken: sheet.taken,
    body: sheet.body,
    position,
  }));
  const performerIds = sheets.flatMap((sheet) => sheet.performerId ?? []);
  const sizeGroupIds = sheets.flatMap((sheet) => sheet.sizeGroupId ?? []);
  const replaced = { OR: [{ performerId: { in: performerIds } }, { sizeGroupId: { in: sizeGroupIds } }] };
  await tx.measurementSheet.deleteMany({ where: { companyId, ...(whole ? {} : replaced) } });
  await insertRows(tx, "MeasurementSheet", sheets);
  const values = sheets.flatMap(({ id: sheetId }, at) =>
    Object.entries(measurements[at].values).map(([measurement, length]) => ({ companyId, sheetId, measurement, length })),
  );
  await insertRows(tx, "MeasurementValue", values);
}

/** The days of a performer (or of everybody) that the staging names become as it says; other days keep their calls. */
export async function saveCalls(saving: Saving, staging: Staging): Promise<void> {
  const { tx, companyId, whole } = saving;
  const performers = await idsOf(saving, "performer");
  const calls = staging.calls.map((call, position) => ({
    companyId,
    performerId: needOrNull(performers, call.performer),
    date: call.date,
    fromMinute: call.from,
    toMinute: call.to,
    kind: call.kind,
    position,
  }));
  if (whole) await tx.call.deleteMany({ where: { companyId } });
  else {
    const named = JSON.stringify(calls.map(({ performerId, date }) => ({ performer: performerId, day: date })));
    await tx.$executeRaw`
      delete from call using (select distinct performer, day from jsonb_to_recordset(${named}::jsonb) as listed (performer uuid, day date)) named
      where company_id = ${companyId}::uuid and date = day and performer_id is not distinct from performer`;
  }
  await insertRows(tx, "Call", calls);
}
