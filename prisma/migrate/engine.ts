import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";
import { PrismaPg } from "@prisma/adapter-pg";
import { bindMigrationAwareSqlAdapterFactory, ColumnTypeEnum, type SqlQuery } from "@prisma/driver-adapter-utils";
import * as bindings from "@prisma/schema-engine-wasm/schema_engine_bg";
import type { Client, Pool } from "pg";
import { readSchema } from "./files";

/** Type id of PostgreSQL's internal "char", which the catalogue uses and the adapter does not know. */
const INTERNAL_CHAR = 18;
const TEXT = 25;

interface Queryable {
  performIO(query: SqlQuery): Promise<{ fields: { dataTypeID: number }[] }>;
  queryRaw(query: SqlQuery): Promise<{ columnTypes: number[] }>;
  executeScript(script: string): Promise<void>;
  underlyingDriver(): Pool | Client;
}

/** Two repairs: internal "char" is read as text, and a script is sent whole, since a `;` may stand inside a statement. */
function repaired<T>(connection: T): T {
  const adapter = connection as T & Queryable;
  const performIO = adapter.performIO.bind(adapter);
  let characters: number[] = [];
  adapter.performIO = async (query) => {
    const result = await performIO(query);
    characters = result.fields.flatMap((field, at) => (field.dataTypeID === INTERNAL_CHAR ? [at] : []));
    for (const at of characters) result.fields[at] = { ...result.fields[at], dataTypeID: TEXT };
    return result;
  };
  const queryRaw = adapter.queryRaw.bind(adapter);
  adapter.queryRaw = async (query) => {
    const result = await queryRaw(query);
    for (const at of characters) result.columnTypes[at] = ColumnTypeEnum.Character;
    return result;
  };
  adapter.executeScript = async (script) => {
    await adapter.underlyingDriver().query(script);
  };
  return adapter;
}

class MigrationPg extends PrismaPg {
  override async connect() {
    return repaired(await super.connect());
  }
}

let loaded: Promise<void> | null = null;

async function load(): Promise<void> {
  const folder = path.dirname(createRequire(import.meta.url).resolve("@prisma/schema-engine-wasm/schema_engine_bg"));
  const { instance } = await WebAssembly.instantiate(await readFile(path.join(folder, "schema_engine_bg.wasm")), {
    "./schema_engine_bg.js": bindings,
  });
  bindings.__wbg_set_wasm(instance.exports);
  (instance.exports as { __wbindgen_start(): void }).__wbindgen_start();
}

/**
 * SQL that turns the database's tables into those of the schema; null when they are the same already. The schema engine runs as
 * WebAssembly over the ordinary driver, so nothing is downloaded. Checks and partial indexes are invisible to it.
 */
export async function difference(databaseUrl: string): Promise<string | null> {
  loaded ??= load();
  await loaded;
  const schema = await readSchema();
  const factory = bindMigrationAwareSqlAdapterFactory(new MigrationPg(databaseUrl));
  const datamodels = schema.files.map(({ path: file, content }): [string, string] => [file, content]);
  const engine = await bindings.SchemaEngine.new({ datamodels }, () => {}, factory);
  try {
    const result = await engine.diff({
      from: { tag: "schemaDatasource", files: schema.files, configDir: process.cwd() },
      to: { tag: "schemaDatamodel", files: schema.files },
      script: true,
      exitCode: true,
      filters: { externalTables: [], externalEnums: [] },
    });
    return result.exitCode === 0 ? null : result.stdout;
  } finally {
    engine.free();
  }
}
