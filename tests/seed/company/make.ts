import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parse } from "csv-parse/sync";
import { Chance } from "#lib/levelling/random";
import { measurementRows } from "./bodies";
import { callRows } from "./calls";
import { castAll, castingRows } from "./casting";
import { performerRows, sizeRows } from "./people";

/**
 * Makes the long tables of seed/company from the short ones that are kept by hand (roles, scenes, appearances) and from the lists of names:
 * `npx tsx tests/seed/company/make.ts`. What it makes is checked in.
 */
export const FOLDER = fileURLToPath(new URL("../../../seed/company", import.meta.url));
const SEED = 1;

const table = (file: string): readonly Readonly<Record<string, string>>[] =>
  parse(readFileSync(`${FOLDER}/${file}`, "utf8"), { columns: true });

export const madeFiles = (): ReadonlyMap<string, string> => {
  const scenesOf = new Map<string, string[]>();
  for (const { role = "", scene = "" } of table("appearances.csv")) scenesOf.set(role, [...(scenesOf.get(role) ?? []), scene]);
  const roles = table("roles.csv").map(({ code = "", kind = "", places }) => ({
    code,
    kind,
    places: Number(places),
    scenes: scenesOf.get(code) ?? [],
  }));
  const casting = castAll(roles);
  return new Map(
    Object.entries({
      "sizes.csv": sizeRows(),
      "performers.csv": performerRows(),
      "measurements.csv": measurementRows(new Chance(SEED)),
      "casting.csv": castingRows(casting),
      "calls.csv": callRows(casting, scenesOf, new Chance(SEED)),
    }).map(([file, rows]) => [file, rows.map((row) => `${row.map(guarded).join(",")}\n`).join("")]),
  );
};

const guarded = (cell: string): string => (cell.includes(",") ? `"${cell}"` : cell);

if (process.argv[1] === fileURLToPath(import.meta.url)) for (const [file, text] of madeFiles()) writeFileSync(`${FOLDER}/${file}`, text);
