import type { Construction } from "#lib/constructions/construction";
import { MEASUREMENTS, type MeasurementSheet } from "#lib/measurements/measurement";
import type { Files } from "./files";
import type { Staging } from "./staging";
import type { RowOf } from "./stagingFile";
import type { FileKey, Tables } from "./tables";

type Rows = { readonly [K in FileKey]: readonly RowOf<Files[K]>[] };

/** Rows that have no fault as the staging they describe. */
export const toStaging = (tables: Tables, constructions: readonly Construction[]): Staging => {
  const rows = Object.fromEntries(
    Object.entries(tables).map(([key, located]) => [key, (located as readonly { values: unknown }[]).map(({ values }) => values)]),
  ) as unknown as Rows;
  const [production] = rows.production;
  if (!production) throw new Error("A staging without a production passed the rules");
  const groupOf = new Map(rows.performers.map(({ code, sizeGroup }) => [code, sizeGroup]));
  return {
    production,
    milestones: rows.milestones,
    sizeGroups: rows.sizes,
    performers: rows.performers,
    measurements: rows.measurements.map(sheet),
    roles: rows.roles,
    casting: rows.casting.map((row) => ({ ...row, sizeGroup: row.sizeGroup ?? groupOf.get(row.performer ?? "") ?? "" })),
    scenes: rows.scenes,
    appearances: rows.appearances,
    costumes: rows.costumes,
    sets: rows.sets,
    pieces: rows.pieces,
    makers: rows.makers.map(({ skills, paceFrom, overtimeCostPerHour, ...row }) => ({
      ...row,
      skills: Object.fromEntries(skills),
      paceFrom: paceFrom.map(([date, pace]) => ({ date, pace })).sort((a, b) => (a.date < b.date ? -1 : 1)),
      // Half as much again, rounded up: common practice, no source.
      overtimeCostPerHour: overtimeCostPerHour ?? Math.ceil((row.costPerHour * 3) / 2),
    })),
    absences: rows.absences.map((row) => ({ ...row, to: row.to ?? row.from })),
    machines: rows.machines,
    calls: rows.calls,
    materials: rows.materials.map((row) => ({ ...row, cuttable: row.cuttable ?? row.width })),
    offers: rows.offers.map(({ pack, prices, ...row }) => ({
      ...row,
      pack: pack.quantity,
      prices: prices.map(([from, price]) => ({ from, price })),
    })),
    lots: rows.lots.map(({ quantity, ...row }) => ({ ...row, quantity: quantity.quantity })),
    stock: rows.stock,
    approvals: rows.approvals,
    otherWork: rows.otherWork.map(({ low, likely, high, ...row }) => ({ ...row, minutes: [low ?? likely, likely, high ?? likely] })),
    constructions,
  };
};

const sheet = ({ performer, sizeGroup, taken, body, ...tapes }: Rows["measurements"][number]): MeasurementSheet => ({
  of: performer !== null ? { performer } : { sizeGroup: sizeGroup ?? "" },
  taken,
  body,
  values: Object.fromEntries(MEASUREMENTS.flatMap((name) => (tapes[name] === null ? [] : [[name, tapes[name]]]))),
});
