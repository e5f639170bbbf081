import type { Measurement } from "#lib/measurements/measurement";
import { MeasurementsUsed, wantedOf } from "#lib/measurements/wanted";
import { type Measured, measuredAges } from "#lib/questions/oldMeasurements";
import type { ProductionView } from "../../../../_data/stagingPlan";

/** A performer as the list shows them; what is said of measurements is only for those who may see them. */
export interface PerformerRow {
  readonly code: string;
  readonly name: string;
  readonly sizeGroup: string;
  readonly minor: boolean;
  readonly roles: readonly string[];
  readonly garments: number;
  readonly sheet: {
    readonly measured: Measured;
    /** What garments made for them are cut by, and no sheet says. */
    readonly missing: readonly Measurement[];
  } | null;
}

export const performerRows = (
  { prepared: { staging, garments }, today }: ProductionView,
  measurements: boolean,
): readonly PerformerRow[] => {
  const ages = new Map(measuredAges(staging, today, { days: null, minorDays: null }).map((one) => [one.performer, one]));
  const used = new MeasurementsUsed(staging.constructions);
  return staging.performers.map(({ code, name, sizeGroup, minor }): PerformerRow => {
    const measured = ages.get(code)!;
    const roles = staging.casting.filter((row) => row.performer === code && row.standing === "cast").map(({ role }) => role);
    const missing = measurements ? wantedOf(staging, garments, code, used).filter(({ from }) => from !== "sheet") : [];
    return {
      code,
      name,
      sizeGroup: staging.sizeGroups.find((group) => group.code === sizeGroup)?.name ?? sizeGroup,
      minor,
      roles: [...new Set(roles)].map((role) => staging.roles.find((one) => one.code === role)?.name ?? role),
      garments: measured.garments.length,
      sheet: measurements ? { measured, missing: missing.map(({ measurement }) => measurement) } : null,
    };
  });
};
