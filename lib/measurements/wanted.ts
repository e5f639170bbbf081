import type { Garment } from "#lib/casting/wardrobe";
import { measurementsUsed } from "#lib/constructions/formulas";
import { versionMeant } from "#lib/constructions/versions";
import type { Staging } from "#lib/staging/staging";
import { bodyOf } from "./body";
import { MEASUREMENTS, type Measurement } from "./measurement";

/** A measurement that garments of a performer are cut by. */
export interface WantedMeasurement {
  readonly measurement: Measurement;
  /** Numbers of those garments. */
  readonly garments: readonly string[];
  /** Where its figure comes from: the newest sheet, the size group, or nowhere (the construction's median stands in). */
  readonly from: "sheet" | "size group" | "nowhere";
}

type Data = Pick<Staging, "measurements" | "constructions" | "performers">;

/** Measurements by construction and version, so that a whole company is asked once each. */
export class MeasurementsUsed {
  private readonly known = new Map<string, readonly Measurement[]>();

  constructor(private readonly constructions: Staging["constructions"]) {}

  /** What a garment that is made is cut by; what comes as it is asks for nothing. */
  of({ construction, version, source }: Garment): readonly Measurement[] {
    if (construction === null || source !== "build") return [];
    const key = `${construction}@${version}`;
    const known = this.known.get(key);
    if (known) return known;
    const meant = versionMeant(this.constructions, construction, version);
    const used = meant ? measurementsUsed(meant) : [];
    this.known.set(key, used);
    return used;
  }
}

/** What must be known of a performer for the garments made for them, in the order of the sheet. Who is only fitted to a garment is not asked for. */
export const wantedOf = (
  staging: Data,
  garments: readonly Garment[],
  performer: string,
  used = new MeasurementsUsed(staging.constructions),
): readonly WantedMeasurement[] => {
  const own = garments.filter(({ wearers }) => wearers[0]?.performer === performer);
  const sizeGroup = staging.performers.find(({ code }) => code === performer)?.sizeGroup ?? "";
  const body = bodyOf(staging, { performer, sizeGroup });
  return MEASUREMENTS.flatMap((measurement): readonly WantedMeasurement[] => {
    const cut = own.filter((garment) => used.of(garment).includes(measurement)).map(({ number }) => number);
    if (cut.length === 0) return [];
    const from = body.values[measurement] === undefined ? "nowhere" : body.fallbacks.includes(measurement) ? "size group" : "sheet";
    return [{ measurement, garments: cut, from }];
  });
};
