import type { GarmentWork } from "#lib/breakdown/work";
import type { Length } from "#lib/units/quantities";

/** The lengths a section is drawn from, all of this garment; those its drivers do not give are left out of the drawing. */
export interface SectionSkirt {
  readonly hip: Length;
  readonly waist: Length;
  readonly basque: Length;
  readonly hoop: { readonly ring: Length; readonly cut: Length; readonly wires: number; readonly layer: number } | null;
  readonly tacks: number;
}

/** Reads them from the computed layers and drivers. Without a driver for the hip, the line the top layer is sewn to stands for it. */
export const sectionSkirt = (work: GarmentWork): SectionSkirt => {
  const driver = (code: string) => work.drivers.find((each) => each.code === code)?.value ?? 0;
  const hip = driver("hipLine") || (work.layers.at(-1)?.seam ?? 0);
  const casing = work.layers.find((layer) => layer.casing);
  const wires = driver("hoopWires");
  const ring = driver("hoopRing");
  return {
    hip,
    waist: Math.min(driver("waistLine") || hip, hip),
    basque: driver("basque"),
    hoop: casing && wires > 0 && ring > hip ? { ring, cut: driver("hoopCut"), wires, layer: casing.layer } : null,
    tacks: driver("tacks"),
  };
};
