import { describe, expect, it } from "vitest";
import { medianWork } from "#lib/breakdown/medianWork";
import { LENGTH_PER_MM } from "#lib/units/quantities";
import { named } from "./library";
import { metres } from "./yardages.json";

describe("a garment for the median body takes the cloth a workroom reckons, within a tenth", () => {
  it.each(metres)("$construction, $role: $least to $most m", ({ construction, role, parameters, least, most }) => {
    const need = medianWork(named(construction), Object.fromEntries(parameters)).needs.find((each) => each.role === role)!;
    const taken = need.quantity / LENGTH_PER_MM / 1000;
    expect(taken).toBeGreaterThanOrEqual(least * 0.9);
    expect(taken).toBeLessThanOrEqual(most * 1.1);
  });
});
