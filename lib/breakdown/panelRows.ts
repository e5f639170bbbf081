import type { Length } from "#lib/units/quantities";

/** Rows of panels laid across the roll; each row takes one panel length of cloth. */
export interface PanelRows {
  /** Panels side by side; 0 when one is broader than the cloth. */
  readonly across: number;
  /** Rows when panels of different layers may share one. */
  readonly shared: number;
  /** Rows when each layer begins a row of its own. */
  readonly layerByLayer: number;
}

/** Rows for so many alike panels in each layer. A panel broader than the cloth takes a row to itself, which the caller must refuse or note. */
export const panelRows = (panelsInLayers: readonly number[], breadth: Length, cuttable: Length): PanelRows => {
  const across = Math.floor(cuttable / breadth);
  const side = Math.max(1, across);
  const rows = (panels: number) => Math.ceil(panels / side);
  return {
    across,
    shared: rows(panelsInLayers.reduce((sum, panels) => sum + panels, 0)),
    layerByLayer: panelsInLayers.reduce((sum, panels) => sum + rows(panels), 0),
  };
};
