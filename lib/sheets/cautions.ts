import type { WorkOperation } from "#lib/breakdown/work";
import type { Garment } from "#lib/casting/wardrobe";
import type { MaterialKind } from "#lib/materials/material";

/**
 * The usual caution beside work that can hurt, by the machine it takes (common practice, no source). A workroom's own rules, the local code
 * and the data sheets come first: it is a reminder on paper, not a training.
 */
const BY_MACHINE: Readonly<Record<string, string>> = {
  "cutting table": "blades locked, fingers guarded",
  "steam iron": "steam burns, nylon melts; off when left",
  "dye vat": "gloves, mask for powder, air; data sheet first",
  overlock: "cuts as it sews: guard on",
};

type Work = Pick<WorkOperation, "machine" | "skill" | "straining">;

/** What to mind at one task; empty when there is nothing out of the ordinary. */
export const taskCautions = ({ machine, skill, straining }: Work): readonly string[] => [
  ...[BY_MACHINE[machine ?? ""] ?? []].flat(),
  ...(skill === "dye" && machine !== "dye vat" ? [BY_MACHINE["dye vat"]!] : []),
  ...(straining ? [`rest ${straining.rest} min after ${straining.run} min at a stretch`] : []),
];

/** What to mind of the garment as a whole, by what it is made of. */
export const garmentCautions = (kinds: ReadonlySet<MaterialKind>, source: Garment["source"]): readonly string[] => [
  ...(kinds.has("net") ? ["Net burns and melts: keep it from flame and heat; ask the local authority before it goes on stage."] : []),
  ...(kinds.has("bone") || kinds.has("hoop") || kinds.has("wire") ? ["Tip and bind every end of bone, hoop and wire."] : []),
  ...(source === "hire" ? ["Hired: nothing is cut, dyed or glued; it goes back as it came."] : []),
];
