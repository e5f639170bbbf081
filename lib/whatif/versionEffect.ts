import { breakDown } from "#lib/breakdown/breakDown";
import type { GarmentWork, ThreePoint } from "#lib/breakdown/work";
import { garmentsOf } from "#lib/casting/garments";
import type { Garment } from "#lib/casting/wardrobe";
import type { Construction } from "#lib/constructions/construction";
import { versionMeant } from "#lib/constructions/versions";
import type { Staging } from "#lib/staging/staging";
import { type MaterialChange, materialChanges } from "./materialChanges";

/** What making a staging's garments by another version of their construction would change: standard work, before batches and plans. */
export interface VersionEffect {
  /** Garments made by the old version that would change, in the order of the piece list. */
  readonly garments: readonly GarmentEffect[];
  /** How many made by it would stay as they are. */
  readonly unchanged: number;
  readonly before: ThreePoint;
  readonly after: ThreePoint;
  /** By material: the sums of the garments'. */
  readonly materials: readonly MaterialChange[];
}

export interface GarmentEffect {
  readonly garment: string;
  readonly name: string;
  readonly piece: string;
  /** Low, likely and high minutes of its operations and fittings. */
  readonly before: ThreePoint;
  readonly after: ThreePoint;
  readonly materials: readonly MaterialChange[];
  /** What the new version would have to be told about it, for example a parameter it does not know. */
  readonly notes: readonly string[];
}

/** Effect of making by `to` what is made by `from`, a version of the same construction that the staging has: all of it, or the pieces listed. */
export const versionEffect = (
  staging: Staging,
  from: Construction,
  to: Construction,
  pieces: "all" | readonly string[] = "all",
): VersionEffect => {
  const made = garmentsOf(staging).filter(
    (garment) => isMadeBy(staging, garment, from) && (pieces === "all" || pieces.includes(garment.piece)),
  );
  const works = (version: Construction) => breakDown({ ...staging, constructions: [version] }, made.map(byAnyVersion));
  const before = works(from);
  const after = works(to);
  const effects = made.map((garment, at) => effectOn(garment, before[at]!, after[at]!));
  const changed = made.flatMap((_, at) => (contentOf(before[at]!) === contentOf(after[at]!) ? [] : [at]));
  return {
    garments: changed.map((at) => effects[at]!),
    unchanged: made.length - changed.length,
    before: added(effects.map((effect) => effect.before)),
    after: added(effects.map((effect) => effect.after)),
    materials: materialChanges(
      before.flatMap((work) => work.needs),
      after.flatMap((work) => work.needs),
    ),
  };
};

const isMadeBy = ({ constructions }: Staging, { construction, version }: Pick<Garment, "construction" | "version">, by: Construction) =>
  construction === by.code && versionMeant(constructions, construction, version)?.version === by.version;

/** The staging it is broken down with has one version only. */
const byAnyVersion = (garment: Garment): Garment => ({ ...garment, version: null });

const effectOn = ({ number, name, piece }: Garment, before: GarmentWork, after: GarmentWork): GarmentEffect => {
  const known = new Set(before.notes.map(({ text }) => text));
  return {
    garment: number,
    name,
    piece,
    before: minutesOf(before),
    after: minutesOf(after),
    materials: materialChanges(before.needs, after.needs),
    notes: after.notes.map(({ text }) => text).filter((text) => !known.has(text)),
  };
};

/** Everything of the work but the version's own number and what is said about it. */
const contentOf = ({ operations, fittings, needs }: GarmentWork): string => JSON.stringify([operations, fittings, needs]);

const minutesOf = ({ operations, fittings }: GarmentWork): ThreePoint =>
  added([...operations.map(({ minutes }) => minutes), ...fittings.map(({ minutes }): ThreePoint => [minutes, minutes, minutes])]);

const added = (all: readonly ThreePoint[]): ThreePoint =>
  all.reduce<ThreePoint>((sum, one) => [sum[0] + one[0], sum[1] + one[1], sum[2] + one[2]], [0, 0, 0]);
