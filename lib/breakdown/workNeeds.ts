import type { NeedRule } from "#lib/constructions/construction";
import type { Length } from "#lib/units/quantities";
import { showLength } from "#lib/units/showLength";
import { type Figures, sayFormula } from "./figures";
import type { FormulaReader } from "./formulaReader";
import { numberOf } from "./layerTable";
import { materialOf } from "./materialOf";
import { panelRows } from "./panelRows";
import type { MakingRequest } from "./request";
import { sayMetres } from "./say";
import type { ComputedLayer, Cut, Need, WorkNote } from "./work";

/** Kinds of cloth whose colour must match within a set. */
const ONE_LOT_KINDS: ReadonlySet<string> = new Set(["net", "cloth", "lining", "stretch", "ribbon"]);

type Amount = Pick<Need, "quantity" | "cuts" | "arithmetic">;
type Tell = (kind: WorkNote["kind"], text: string) => void;

/** One need worked out; null when there is none of it, or nobody named its material (which is told). */
export const workNeed = (rule: NeedRule, request: MakingRequest, figures: Figures, formulas: FormulaReader, tell: Tell): Need | null => {
  const { reader } = request;
  const label = rule.label[reader.words];
  const number = (text: string) =>
    text === "" ? 1 : numberOf(formulas.work(text, figures.values), (fault) => tell("parameter", `${label}: ${fault}`));
  const amount = amountOf(rule, request, figures, number, formulas, tell);
  if (amount.quantity === 0) return null;
  const { code, material } = materialOf(request, rule.role);
  if (code === "") {
    tell("material", `${label}: no material is named for "${rule.role}". Name one in the piece.`);
    return null;
  }
  if (material && material.measure !== rule.measure) {
    tell(
      "material",
      `${label}: ${material.name} is sold by ${material.measure}, but this is needed by ${rule.measure}. Name another material.`,
    );
    return null;
  }
  if (!material) tell("material", `${label}: "${code}" is not among the materials.`);
  const { role, measure, operation } = rule;
  const oneLotSet = ONE_LOT_KINDS.has(rule.kind) ? request.oneLotSet : null;
  return { garment: request.garment, role, label: rule.label, material: code, measure, ...amount, oneLotSet, operation };
};

const amountOf = (
  rule: NeedRule,
  request: MakingRequest,
  figures: Figures,
  number: (text: string) => number,
  formulas: FormulaReader,
  tell: Tell,
): Amount => {
  const { reader } = request;
  const show = (length: Length) => showLength(length, reader.lengths);
  switch (rule.cut) {
    case "net layers":
      return netAmount(
        figures.layers.filter((layer) => layer.net === rule.role),
        show,
        (length) => sayMetres(length, reader),
      );
    case "pieces": {
      const [length, count] = [Math.round(number(rule.formula)), number(rule.count)];
      const cuts: readonly Cut[] = length * count > 0 ? [{ label: rule.label[reader.words], length, breadth: null, count }] : [];
      return { quantity: length * count, cuts, arithmetic: `${count} x ${show(length)}` };
    }
    case "panels": {
      const [length, breadth, count] = [Math.round(number(rule.formula)), Math.round(number(rule.breadth)), number(rule.count)];
      if (length * breadth * count === 0) return { quantity: 0, cuts: [], arithmetic: "" };
      const label = rule.label[reader.words];
      const known = materialOf(request, rule.role).material?.cuttable;
      if (!known) tell("material", `${label}: the width of its material is not known; one panel across is reckoned.`);
      const cuttable = known ?? breadth;
      const rows = panelRows([count], breadth, cuttable);
      if (rows.across === 0) tell("material", `${label}: a panel does not lie across ${show(cuttable)}. Choose broader cloth.`);
      return {
        quantity: rows.shared * length,
        cuts: [{ label, length, breadth, count }],
        arithmetic: `${count} panels ${show(length)} long and ${show(breadth)} broad, ${Math.max(1, rows.across)} across ${show(cuttable)}: ${rows.shared} rows`,
      };
    }
    case "plain": {
      const worked = number(rule.formula);
      const tree = formulas.tree(rule.formula);
      const arithmetic = tree.ok ? sayFormula(rule.formula, tree.value, figures.values, figures.units, reader) : "";
      return { quantity: rule.measure === "length" ? Math.round(worked) : worked, cuts: [], arithmetic };
    }
  }
};

const netAmount = (layers: readonly ComputedLayer[], show: (length: Length) => string, metres: (length: Length) => string): Amount => {
  const quantity = layers.reduce((sum, layer) => sum + layer.roll, 0);
  return {
    quantity,
    cuts: layers.map(({ layer, depth, widths }) => ({ label: `layer ${layer}`, length: depth, breadth: null, count: widths })),
    arithmetic: `${layers.map(({ widths, depth }) => `${widths} x ${show(depth)}`).join(" + ")} = ${metres(quantity)} off the roll`,
  };
};
