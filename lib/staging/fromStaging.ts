import * as z from "zod";
import type { Skill } from "#lib/labour/skills";
import { MEASUREMENTS, type MeasurementSheet } from "#lib/measurements/measurement";
import type { PerMille } from "#lib/units/quantities";
import { headingOf } from "./column";
import { FILES, type Files } from "./files";
import type { Staging } from "./staging";
import type { Columns, RowOf, StagingFile } from "./stagingFile";
import { FILE_KEYS, type FileKey } from "./tables";

type Rows = { readonly [K in FileKey]: readonly RowOf<Files[K]>[] };

/** A file as text: headings, and cells in their order. */
export interface WrittenTable {
  readonly file: string;
  readonly headings: readonly string[];
  /** Places of the columns that name a row; empty when rows have no names. */
  readonly key: readonly number[];
  readonly rows: readonly (readonly string[])[];
}

/** The files of a staging as tables of text, each cell as the schema of its file writes it. */
export const fromStaging = (staging: Staging): readonly WrittenTable[] => {
  const rows = rowsOfFiles(staging);
  return FILE_KEYS.map((key) => written(staging, key, rows));
};

/** One of the files as such a table. */
export const writeTable = (staging: Staging, key: FileKey): WrittenTable => written(staging, key, rowsOfFiles(staging));

const written = (staging: Staging, key: FileKey, rows: Rows): WrittenTable => {
  const file = FILES[key] as unknown as StagingFile<Columns>;
  const columns = Object.entries(file.schema(staging.production).shape);
  return {
    file: file.name,
    headings: columns.map(([column]) => headingOf(column)),
    key: file.key.map((name) => columns.findIndex(([column]) => column === name)),
    rows: (rows[key] as readonly Readonly<Record<string, unknown>>[]).map((row) =>
      columns.map(([column, cell]) => z.encode(cell, row[column])),
    ),
  };
};

/** The rows of the files as values, as reading them would give. */
export const rowsOfFiles = (staging: Staging): Rows => {
  const measures = new Map(staging.materials.map(({ code, measure }) => [code, measure]));
  const measureOf = (material: string) => measures.get(material) ?? "count";
  return {
    ...staging,
    production: [staging.production],
    sizes: staging.sizeGroups,
    measurements: staging.measurements.map(sheetRow),
    makers: staging.makers.map((maker) => ({
      ...maker,
      skills: Object.entries(maker.skills) as [Skill, PerMille][],
      paceFrom: maker.paceFrom.map(({ date, pace }) => [date, pace] as const),
    })),
    offers: staging.offers.map((offer) => ({
      ...offer,
      pack: { measure: measureOf(offer.material), quantity: offer.pack },
      prices: offer.prices.map(({ from, price }) => [from, price] as const),
    })),
    lots: staging.lots.map((lot) => ({ ...lot, quantity: { measure: measureOf(lot.material), quantity: lot.quantity } })),
    otherWork: staging.otherWork.map(({ minutes: [low, likely, high], ...task }) => ({ ...task, low, likely, high })),
  };
};

const sheetRow = ({ of, taken, body, values }: MeasurementSheet): Rows["measurements"][number] => ({
  performer: "performer" in of ? of.performer : null,
  sizeGroup: "sizeGroup" in of ? of.sizeGroup : null,
  taken,
  body,
  ...(Object.fromEntries(MEASUREMENTS.map((name) => [name, values[name] ?? null])) as Record<(typeof MEASUREMENTS)[number], number | null>),
});
