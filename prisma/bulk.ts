import type { Transaction } from "./client";
import { Prisma } from "./generated/client";
import { newId } from "./ids";

/** A row to be written: days as `YYYY-MM-DD`, whole numbers as numbers. */
type Row<M extends Prisma.ModelName> = Extract<
  Prisma.TypeMap["model"][M]["operations"]["createMany"]["args"]["data"],
  readonly unknown[]
>[number];

const snake = (name: string): string => name.replaceAll(/(?!^)([A-Z])/g, "_$1").toLowerCase();
const quoted = (name: string): string => `"${snake(name)}"`;

/** Inserts any number of rows with one statement. All rows have the same fields. */
export async function insertRows<M extends Prisma.ModelName>(tx: Transaction, model: M, rows: readonly Row<M>[]): Promise<void> {
  await write(tx, model, rows, () => "");
}

/**
 * Inserts rows, or changes those that are there already by company and `key`: they keep their ids. A row that would stay as it is
 * is left alone. With a `version` field in the rows each change counts it up.
 */
export async function upsertRows<M extends Prisma.ModelName>(
  tx: Transaction,
  model: M,
  key: readonly (keyof Row<M> & string)[],
  rows: readonly Row<M>[],
  /** Fields that only new rows are given. */
  firstOnly: readonly (keyof Row<M> & string)[] = [],
): Promise<void> {
  await write(tx, model, rows, (fields) => {
    const fixed = new Set<string>(["id", "companyId", "version", ...key, ...firstOnly]);
    const changing = fields.filter((field) => !fixed.has(field));
    const target = `(${["companyId", ...key].map(quoted).join(", ")})`;
    if (changing.length === 0) return `on conflict ${target} do nothing`;
    const sets = changing.map((field) => `${quoted(field)} = excluded.${quoted(field)}`);
    if (fields.includes("version")) sets.push(`"version" = kept."version" + 1`);
    const of = (table: string) => `(${changing.map((field) => `${table}.${quoted(field)}`).join(", ")})`;
    return `on conflict ${target} do update set ${sets.join(", ")} where ${of("kept")} is distinct from ${of("excluded")}`;
  });
}

async function write<M extends Prisma.ModelName>(
  tx: Transaction,
  model: M,
  rows: readonly Row<M>[],
  onConflict: (fields: readonly string[]) => string,
): Promise<void> {
  if (rows.length === 0) return;
  const whole = rows.map((row) => ({ id: newId(), ...(row as Record<string, unknown>) }));
  const fields = Object.keys(whole[0]);
  const columns = fields.map(quoted).join(", ");
  const json = JSON.stringify(whole.map((row) => Object.fromEntries(Object.entries(row).map(([name, value]) => [snake(name), value]))));
  const table = quoted(model);
  await tx.$executeRaw`${Prisma.raw(`insert into ${table} as kept (${columns}) select ${columns} from jsonb_populate_recordset(null::${table}, `)}${json}::jsonb) ${Prisma.raw(onConflict(fields))}`;
}
