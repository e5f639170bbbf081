import { showDay } from "#lib/calendar/showDay";
import { sheetsOf } from "#lib/measurements/sheets";
import type { ProductionView } from "../../../_data/stagingPlan";
import type { GridFacts } from "./GridTable";

/** Garments by place, costumes by role, and what is known of each performer: when they were measured, for those who may know. */
export const gridFacts = ({ prepared: { staging, garments } }: ProductionView, base: string, measurements: boolean): GridFacts => {
  const worn: Record<string, number> = {};
  for (const { role, wearers } of garments)
    for (const place of new Set(wearers.map((wearer) => wearer.place))) worn[`${role} ${place}`] = (worn[`${role} ${place}`] ?? 0) + 1;
  const costumes: Record<string, number> = {};
  for (const { role } of staging.costumes) costumes[role] = (costumes[role] ?? 0) + 1;
  const about = staging.performers.map(({ code, sizeGroup, minor }) => {
    const [newest] = measurements ? sheetsOf(staging, code) : [];
    const sheet = newest ? `sheet of ${showDay(newest.taken)}, ${newest.body}` : measurements ? "not measured" : "";
    return [code, [sizeGroup, sheet, minor ? "minor" : ""].filter(Boolean).join(", ")] as const;
  });
  return { base, garments: worn, costumes, about: Object.fromEntries(about) };
};
