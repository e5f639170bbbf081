import { medianWork } from "#lib/breakdown/medianWork";
import type { ThreePoint } from "#lib/breakdown/work";
import type { Garment } from "#lib/casting/wardrobe";
import type { BothWords } from "#lib/constructions/construction";
import { versionMeant, versionsOf } from "#lib/constructions/versions";
import type { Staging } from "#lib/staging/staging";
import type { Length } from "#lib/units/quantities";

export interface ConstructionRow {
  readonly code: string;
  readonly name: BothWords;
  /** Oldest first. */
  readonly versions: readonly number[];
  /** How many garments of the production are made by any of them. */
  readonly garments: number;
  /** Minutes of the newest version for its median body. */
  readonly minutes: ThreePoint;
  readonly tasks: number;
  /** Off the roll, all its layers; 0 without a layer table. */
  readonly net: Length;
}

/** The constructions of a production: those it uses first, then by name. */
export const constructionRows = ({ constructions, production }: Staging, garments: readonly Garment[]): readonly ConstructionRow[] => {
  const codes = [...new Set(constructions.map(({ code }) => code))];
  const rows = codes.map((code): ConstructionRow => {
    const newest = versionMeant(constructions, code, null)!;
    const work = medianWork(newest);
    const nets = new Set(newest.needs.filter(({ kind }) => kind === "net").map(({ role }) => role));
    const point = (at: 0 | 1 | 2) => work.operations.reduce((sum, { minutes }) => sum + minutes[at], 0);
    return {
      code,
      name: newest.name,
      versions: versionsOf(constructions, code).map(({ version }) => version),
      garments: garments.filter(({ construction }) => construction === code).length,
      minutes: [point(0), point(1), point(2)],
      tasks: work.operations.length,
      net: work.needs.filter(({ role }) => nets.has(role)).reduce((sum, { quantity }) => sum + quantity, 0),
    };
  });
  const name = (row: ConstructionRow) => row.name[production.words];
  return rows.sort((a, b) => Number(b.garments > 0) - Number(a.garments > 0) || (name(a) < name(b) ? -1 : 1));
};
