import { group } from "d3-array";
import type { Material, Quantity } from "#lib/materials/material";
import { partsFigure, shownParts, showParts, showQuantity } from "#lib/materials/showQuantity";
import type { Production } from "#lib/staging/staging";
import { showMoney } from "#lib/units/money";
import { showPerMille } from "#lib/units/perMille";
import type { Choice } from "./choice";
import type { InTime } from "./deliveries";
import type { PurchaseLine } from "./purchase";

type Reckoned = Omit<PurchaseLine, "arithmetic" | "neededBy" | "orderBy" | "warnings">;

/**
 * The arithmetic of a line in words, in the production's units: needs, washing, spare, shelf, packs, money. Figures are rounded so that they
 * add up as they stand: those of the needs by largest remainder, and the last part of the sum takes what rounding leaves.
 */
export const lineArithmetic = (line: Reckoned, material: Material, choice: Choice, production: Production): string => {
  const { lengths, currency, words } = production;
  const { measure } = line;
  const parts = (quantity: Quantity) => shownParts(quantity, measure, lengths);
  const figure = (shown: number) => partsFigure(shown, measure);
  const show = (shown: number) => showParts(shown, measure, lengths);
  const needs = fitted(
    line.reasons.map((reason) => reason.quantity),
    line.gross,
    parts,
  );
  const added = [
    { shown: parts(line.shrinkage), sign: 1, why: `for ${showPerMille(material.shrinkage)} lost in washing` },
    { shown: parts(line.spare - line.repair), sign: 1, why: `for ${showPerMille(material.spare)} waste and spare` },
    { shown: parts(line.repair), sign: 1, why: `kept of ${line.oneLotSet ?? "it"} for repair` },
    ...line.fromShelf.map(({ lot, quantity }) => ({ shown: parts(quantity), sign: -1, why: `from lot ${lot}` })),
  ].filter(({ shown }) => shown > 0);
  const left = added.reduce((rest, { shown, sign }) => rest - sign * shown, parts(line.toBuy) - parts(line.gross));
  const last = added.at(-1);
  if (last) last.shown += last.sign * left;
  const steps = added.map(({ shown, sign, why }) => ` ${sign > 0 ? "+" : "−"} ${figure(shown)} ${why}`).join("");
  const money = (amount: number) => showMoney(amount, currency, words);
  return [
    `${needs.length > 1 ? `${alike(needs, figure)} = ` : ""}${show(parts(line.gross))}${steps}`,
    added.length > 0 ? ` = ${show(parts(line.toBuy))} to buy` : "",
    `; ${line.deliveries
      .flatMap((delivery) => delivery.parts)
      .map(({ packs, price }, at) => `${packs}${at === 0 ? ` × ${showQuantity(line.pack, measure, lengths)}` : ""} at ${money(price)}`)
      .join(" + ")} = ${money(line.cost)}`,
    whyPacks(choice),
  ].join("");
};

/** Rounded parts that add up to the rounded whole: all rounded down, then the largest remainders up. */
const fitted = (quantities: readonly Quantity[], whole: Quantity, parts: (quantity: Quantity) => number): readonly number[] => {
  const ratio = whole > 0 ? parts(whole) / whole : 0;
  const shown = quantities.map((quantity) => Math.floor(quantity * ratio));
  const short = parts(whole) - shown.reduce((sum, one) => sum + one, 0);
  const order = quantities
    .map((quantity, at) => ({ at, rest: quantity * ratio - shown[at]! }))
    .sort((a, b) => b.rest - a.rest || a.at - b.at);
  for (const { at } of order.slice(0, short)) shown[at]!++;
  return shown;
};

/** `2 × 15.22 + 14.3`: equal figures counted together, in the order they come. */
const alike = (needs: readonly number[], figure: (shown: number) => string): string =>
  [...group(needs, (shown) => shown)]
    .map(([shown, same]) => (same.length > 1 ? `${same.length} × ${figure(shown)}` : figure(shown)))
    .join(" + ");

/** Why there are more packs than the quantity fills; empty when there are not. */
const whyPacks = ({ byQuantity, byCutting, order, offer, plan }: Choice): string => {
  if (order.packs > Math.max(byQuantity, byCutting))
    return order.packs > offer.minimumPacks
      ? `, less than ${Math.max(byQuantity, byCutting)} at their price`
      : `, the least ${offer.supplier} sells`;
  if (byCutting <= byQuantity) return "";
  const cut = plan();
  const bound = cut === null || cut.stock === null ? "" : cut.proved ? ", and no plan opens fewer" : `, at least ${cut.bound}`;
  return `, since the pieces as laid out open ${byCutting}${bound}`;
};

/** Why in one order or in several, where that was weighed; empty where it was no question. */
export const whyTimes = (times: InTime | null, { currency, words }: Production): string => {
  if (times === null) return "";
  const { deliveries, cost, atOnce } = times;
  const money = (amount: number) => showMoney(amount, currency, words);
  return deliveries.length > 1
    ? `; in ${deliveries.length} orders, ${money(atOnce - cost)} less with carriage and keeping than at once`
    : "; at once, since keeping it costs less than another order";
};
