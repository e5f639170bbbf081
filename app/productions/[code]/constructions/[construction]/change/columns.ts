import type { RowList } from "#lib/constructions/rowActs";

export interface DraftColumn {
  readonly heading: string;
  /** Where the value stands within its row. */
  readonly path: string;
  /** How much room it takes: a figure, a few words, or a formula. */
  readonly room: "figure" | "word" | "formula";
}

const column = (heading: string, path: string, room: DraftColumn["room"]): DraftColumn => ({ heading, path, room });

/** The columns of each list that are changed by hand; a value a row does not have is left out. */
export const DRAFT_COLUMNS: Readonly<Record<RowList, readonly DraftColumn[]>> = {
  parameters: [
    column("In formulas", "code", "word"),
    column("Parameter", "label.uk", "word"),
    column("In US words", "label.us", "word"),
    column("Usually", "value", "figure"),
    column("From", "min", "figure"),
    column("To", "max", "figure"),
  ],
  layers: [
    column("Layers", "count", "figure"),
    column("Depth", "depth", "formula"),
    column("Fullness", "fullness", "formula"),
    column("Sewn to", "seam", "formula"),
    column("Row below the basque", "drop", "formula"),
    column("Net", "net", "word"),
    column("Dyed", "dyed", "word"),
    column("Casing", "casing", "word"),
  ],
  drivers: [
    column("In formulas", "code", "word"),
    column("Quantity", "label.uk", "word"),
    column("In US words", "label.us", "word"),
    column("Formula", "formula", "formula"),
  ],
  operations: [
    column("Code", "code", "word"),
    column("Task", "name.uk", "word"),
    column("In US words", "name.us", "word"),
    column("Skill", "skill", "word"),
    column("Machine", "machine", "word"),
    column("Set-up, low", "setupMinutes.0", "figure"),
    column("likely", "setupMinutes.1", "figure"),
    column("high (minutes)", "setupMinutes.2", "figure"),
    column("Learning", "learning", "figure"),
    column("Only when", "when", "formula"),
  ],
  fittings: [
    column("Code", "code", "word"),
    column("Fitting", "name.uk", "word"),
    column("In US words", "name.us", "word"),
    column("Minutes", "minutes", "figure"),
    column("Only when", "when", "formula"),
  ],
  needs: [
    column("Code", "role", "word"),
    column("For", "label.uk", "word"),
    column("In US words", "label.us", "word"),
    column("Material", "material", "word"),
    column("Quantity, or length of one", "formula", "formula"),
    column("How many", "count", "formula"),
    column("Breadth", "breadth", "formula"),
    column("Only when", "when", "formula"),
  ],
};

export const LIST_TITLES: Readonly<Record<RowList, string>> = {
  parameters: "What may differ",
  layers: "Layers of net, lowest first",
  drivers: "What is counted",
  operations: "Tasks",
  fittings: "Fittings",
  needs: "Needs",
};
