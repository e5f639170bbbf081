import type { Absence, Machine, Maker, WeekHours } from "#lib/labour/workroom";
import type { Transaction } from "../client";
import { plainDate, plainDateOrNull } from "../plainDates";

interface Workroom {
  readonly makers: readonly Maker[];
  readonly absences: readonly Absence[];
  readonly machines: readonly Machine[];
}

interface HoursRow {
  readonly weekday: number;
  readonly fromMinute: number;
  readonly toMinute: number;
  readonly overtime: boolean;
}

/** Who works in a workroom, when, and with what. */
export async function loadWorkroom(tx: Transaction, companyId: string, workroomId: string): Promise<Workroom> {
  const inUse = { where: { companyId, workroomId, retiredAt: null }, orderBy: [{ position: "asc" as const }, { code: "asc" as const }] };
  const makers = await tx.maker.findMany({
    ...inUse,
    include: {
      makerSkills: { orderBy: { skill: "asc" } },
      makerHours: { orderBy: { position: "asc" } },
      makerPaces: { orderBy: { position: "asc" } },
    },
  });
  const machines = await tx.machine.findMany(inUse);
  const absences = await tx.absence.findMany({
    where: { companyId, workroomId, OR: [{ makerId: null }, { maker: { retiredAt: null } }] },
    include: { maker: { select: { code: true } } },
    orderBy: [{ position: "asc" }, { id: "asc" }],
  });
  return {
    makers: makers.map((maker) => ({
      code: maker.code,
      name: maker.name,
      trade: maker.trade,
      employment: maker.employment as Maker["employment"],
      skills: Object.fromEntries(maker.makerSkills.map(({ skill, pace }) => [skill, pace])),
      hours: weekHours(maker.makerHours, false),
      overtime: weekHours(maker.makerHours, true),
      productive: maker.productive,
      reservedMinutesPerWeek: maker.reservedMinutesPerWeek,
      paceFrom: maker.makerPaces.map(({ date, pace }) => ({ date: plainDate(date), pace })),
      costPerHour: Number(maker.costPerHour),
      overtimeCostPerHour: Number(maker.overtimeCostPerHour),
      starts: plainDateOrNull(maker.starts),
      ends: plainDateOrNull(maker.ends),
    })),
    absences: absences.map((absence) => ({
      maker: absence.maker?.code ?? null,
      from: plainDate(absence.fromDate),
      to: plainDate(absence.toDate),
      fromTime: absence.fromMinute,
      toTime: absence.toMinute,
      reason: absence.reason,
    })),
    machines: machines.map(({ code, name, kind, count }) => ({ code, name, kind, count })),
  };
}

const weekHours = (rows: readonly HoursRow[], overtime: boolean): WeekHours[] =>
  rows.filter((row) => row.overtime === overtime).map(({ weekday, fromMinute, toMinute }) => ({ weekday, from: fromMinute, to: toMinute }));
