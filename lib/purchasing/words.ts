import { group } from "d3-array";
import type { Material, Quantity } from "#lib/materials/material";
import { quantityFigure, showQuantity } from "#lib/materials/showQuantity";
import type { Production } from "#lib/staging/staging";
import { showMoney } from "#lib/units/money";
import { showPerMille } from "#lib/units/perMille";
import type { PurchaseLine } from "./purchase";

/** `2 × 15.22 + 14.3`: needs of equal size counted together, in the order they come. */
const sumOf = (quantities: readonly Quantity[], figure: (quantity: Quantity) => string): string =>
  [...group(quantities, (quantity) => quantity)]
    .map(([quantity, alike]) => (alike.length > 1 ? `${alike.length} × ${figure(quantity)}` : figure(quantity)))
    .join(" + ");

type Reckoned = Omit<PurchaseLine, "arithmetic" | "neededBy" | "orderBy" | "warnings">;

/** The arithmetic of a line in words, in the production's units: needs, washing, spare, shelf, packs, money. */
export const lineArithmetic = (line: Reckoned, material: Material, production: Production): string => {
  const { lengths, currency, words } = production;
  const show = (quantity: Quantity) => showQuantity(quantity, line.measure, lengths);
  const figure = (quantity: Quantity) => quantityFigure(quantity, line.measure, lengths);
  const quantities = line.reasons.map((reason) => reason.quantity);
  const parts = [quantities.length > 1 ? `${sumOf(quantities, figure)} = ${show(line.gross)}` : show(line.gross)];
  if (line.shrinkage > 0) parts.push(`+ ${figure(line.shrinkage)} for ${showPerMille(material.shrinkage)} lost in washing`);
  if (line.spare > 0) parts.push(`+ ${figure(line.spare)} for ${showPerMille(material.spare)} waste and spare`);
  for (const { lot, quantity } of line.fromShelf) parts.push(`− ${figure(quantity)} from lot ${lot}`);
  if (parts.length > 1) parts.push(`= ${show(line.toBuy)} to buy`);
  const money = (amount: number) => showMoney(amount, currency, words);
  return `${parts.join(" ")}; ${line.packs} × ${show(line.pack)} at ${money(line.pricePerPack)} = ${money(line.cost)}`;
};
