import type { Call, Performer, SizeGroup } from "#lib/casting/casting";
import type { MeasurementSheet } from "#lib/measurements/measurement";
import type { Transaction } from "../client";
import { plainDate } from "../plainDates";

interface People {
  readonly sizeGroups: readonly SizeGroup[];
  readonly performers: readonly Performer[];
  readonly measurements: readonly MeasurementSheet[];
  readonly calls: readonly Call[];
}

/** Everybody of the company who is still on its registers, as measured and called. */
export async function loadPeople(tx: Transaction, companyId: string): Promise<People> {
  const inUse = { where: { companyId, retiredAt: null }, orderBy: [{ position: "asc" as const }, { code: "asc" as const }] };
  const sizeGroups = await tx.sizeGroup.findMany(inUse);
  const performers = await tx.performer.findMany({ ...inUse, include: { sizeGroup: { select: { code: true } } } });
  const sheets = await tx.measurementSheet.findMany({
    where: { companyId, OR: [{ performer: { retiredAt: null } }, { sizeGroup: { retiredAt: null } }] },
    include: { measurementValues: true, performer: { select: { code: true } }, sizeGroup: { select: { code: true } } },
    orderBy: [{ position: "asc" }, { id: "asc" }],
  });
  const calls = await tx.call.findMany({
    where: { companyId, OR: [{ performerId: null }, { performer: { retiredAt: null } }] },
    include: { performer: { select: { code: true } } },
    orderBy: [{ position: "asc" }, { id: "asc" }],
  });
  return {
    sizeGroups: sizeGroups.map(({ code, name }) => ({ code, name })),
    performers: performers.map(({ code, name, sizeGroup, minor }) => ({ code, name, sizeGroup: sizeGroup.code, minor })),
    measurements: sheets.map((sheet) => ({
      of: sheet.performer ? { performer: sheet.performer.code } : { sizeGroup: sheet.sizeGroup?.code ?? "" },
      taken: plainDate(sheet.taken),
      body: sheet.body as MeasurementSheet["body"],
      values: Object.fromEntries(sheet.measurementValues.map(({ measurement, length }) => [measurement, length])),
    })),
    calls: calls.map((call) => ({
      performer: call.performer?.code ?? null,
      date: plainDate(call.date),
      from: call.fromMinute,
      to: call.toMinute,
      kind: call.kind as Call["kind"],
    })),
  };
}
