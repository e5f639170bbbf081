import * as z from "zod";
import { PRICE_BREAKS } from "#lib/materials/material";
import { emptyMeans } from "../cells/cell";
import { money, quantity, wholeNumber } from "../cells/numbers";
import { pairs } from "../cells/pairs";
import { codeText, oneOf, someText } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

export const offers = stagingFile({
  name: "offers.csv",
  about: "Packs a supplier sells a material in.",
  key: ["material", "supplier", "pack"],
  schema: ({ lengths, currency }) =>
    z.object({
      material: column(codeText(), { meaning: "Material", example: "net-white-54", refersTo: "materials" }),
      supplier: column(someText(), { meaning: "Who sells it", example: "Harbour Nets" }),
      pack: column(quantity(lengths), {
        meaning: "What one pack holds: a length with its unit, or a count",
        unit: "length or count",
        example: "25 yd",
      }),
      minimumPacks: column(emptyMeans(wholeNumber(1, 10_000), 1), {
        meaning: "Fewest packs in one order",
        unit: "count",
        example: "2",
        empty: "1",
      }),
      prices: column(pairs(wholeNumber(1, 1_000_000), money(currency)), {
        meaning: "Price of a pack from so many packs on; the first is from 1",
        unit: "count, money",
        example: "1=48.00; 10=43.50",
      }),
      leadDays: column(wholeNumber(0, 1000), { meaning: "Calendar days from order to delivery", unit: "days", example: "21" }),
      inspectionDays: column(emptyMeans(wholeNumber(0, 365), 0), {
        meaning: "Calendar days from delivery until it may be cut: counting, airing, washing",
        unit: "days",
        example: "2",
        empty: "0",
      }),
      breaks: column(emptyMeans(oneOf(PRICE_BREAKS), "all"), {
        meaning: "At a price break: all packs take the price reached (all), or each pack that of its own step (incremental)",
        example: "incremental",
        empty: "all",
      }),
      orderCost: column(emptyMeans(money(currency), 0), {
        meaning: "Carriage and handling of one order, whatever is in it",
        unit: "money",
        example: "12.50",
        empty: "nothing",
      }),
    }),
});
