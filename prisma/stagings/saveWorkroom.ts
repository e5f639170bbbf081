import type { WeekHours } from "#lib/labour/workroom";
import type { Staging } from "#lib/staging/staging";
import { insertRows, upsertRows } from "../bulk";
import { type Ids, need, needOrNull } from "../ids";
import { changedRows, idsOf, retireMissing, type Saving } from "./saving";

/** Makers with skills, hours and pace. */
export async function saveMakers(saving: Saving, staging: Staging): Promise<void> {
  const { tx, companyId, workroomId } = saving;
  await upsertRows(
    tx,
    "Maker",
    ["workroomId", "code"],
    changedRows(saving, staging, "makers").map(({ row: maker, position }) => ({
      companyId,
      workroomId,
      code: maker.code,
      name: maker.name,
      trade: maker.trade,
      employment: maker.employment,
      productive: maker.productive,
      reservedMinutesPerWeek: maker.reservedMinutesPerWeek,
      costPerHour: maker.costPerHour,
      overtimeCostPerHour: maker.overtimeCostPerHour,
      starts: maker.starts,
      ends: maker.ends,
      position,
      retiredAt: null,
      version: 1,
    })),
  );
  await retireMissing(saving, "maker", staging.makers);
  await saveMakersParts(saving, staging, await idsOf(saving, "maker"));
}

export async function saveMachines(saving: Saving, staging: Staging): Promise<void> {
  const { tx, companyId, workroomId } = saving;
  const rows = changedRows(saving, staging, "machines").map(({ row, position }) => ({
    companyId,
    workroomId,
    ...row,
    position,
    retiredAt: null,
    version: 1,
  }));
  await upsertRows(tx, "Machine", ["workroomId", "code"], rows);
  await retireMissing(saving, "machine", staging.machines);
}

async function saveMakersParts({ tx, companyId }: Saving, staging: Staging, ids: Ids): Promise<void> {
  const makerIds = staging.makers.map((maker) => need(ids, maker.code));
  const replaced = { where: { companyId, makerId: { in: makerIds } } };
  await tx.makerSkill.deleteMany(replaced);
  await tx.makerHours.deleteMany(replaced);
  await tx.makerPace.deleteMany(replaced);
  const each = staging.makers.map((maker) => ({ maker, of: { companyId, makerId: need(ids, maker.code) } }));
  const hours = (of: { companyId: string; makerId: string }, rows: readonly WeekHours[], overtime: boolean) =>
    rows.map(({ weekday, from, to }, position) => ({ ...of, weekday, fromMinute: from, toMinute: to, overtime, position }));
  await insertRows(
    tx,
    "MakerSkill",
    each.flatMap(({ maker, of }) => Object.entries(maker.skills).map(([skill, pace]) => ({ ...of, skill, pace }))),
  );
  await insertRows(
    tx,
    "MakerHours",
    each.flatMap(({ maker, of }) => [...hours(of, maker.hours, false), ...hours(of, maker.overtime, true)]),
  );
  await insertRows(
    tx,
    "MakerPace",
    each.flatMap(({ maker, of }) => maker.paceFrom.map(({ date, pace }, position) => ({ ...of, date, pace, position }))),
  );
}

/** The absences of a maker (or the closing days) that the staging lists replace those there were. */
export async function saveAbsences(saving: Saving, staging: Staging): Promise<void> {
  const { tx, companyId, workroomId, whole } = saving;
  const ids = await idsOf(saving, "maker");
  const absences = staging.absences.map((absence, position) => ({
    companyId,
    workroomId,
    makerId: needOrNull(ids, absence.maker),
    fromDate: absence.from,
    toDate: absence.to,
    fromMinute: absence.fromTime,
    toMinute: absence.toTime,
    reason: absence.reason,
    position,
  }));
  const makerIds = absences.flatMap((absence) => absence.makerId ?? []);
  const closed = absences.some((absence) => absence.makerId === null) ? [{ makerId: null }] : [];
  const replaced = whole ? {} : { OR: [{ makerId: { in: makerIds } }, ...closed] };
  await tx.absence.deleteMany({ where: { companyId, workroomId, ...replaced } });
  await insertRows(tx, "Absence", absences);
}
