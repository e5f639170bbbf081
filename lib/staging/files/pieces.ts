import * as z from "zod";
import { SOURCES } from "#lib/casting/wardrobe";
import { emptyMeans, orNull } from "../cells/cell";
import { money, wholeNumber } from "../cells/numbers";
import { record } from "../cells/pairs";
import { codeText, oneOf, someText } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

export const pieces = stagingFile({
  name: "pieces.csv",
  about: "The piece list: every item counted. Garments are numbered in the order of its rows.",
  key: ["code"],
  schema: ({ currency }) =>
    z.object({
      code: column(codeText(), { meaning: "Short name of the line", example: "snow-skirt" }),
      costume: column(codeText(), { meaning: "Costume it is part of", example: "snow-white", refersTo: "costumes" }),
      name: column(someText(), { meaning: "Name on tickets and lists", example: "Snow skirt" }),
      source: column(oneOf(SOURCES), { meaning: "build, pull (from stock), alter, hire (rent) or buy", example: "build" }),
      construction: column(orNull(codeText()), {
        meaning: "How it is made: code of a file in constructions/",
        example: "classical-tutu",
        empty: "no work to be done on it",
        refersTo: "constructions",
      }),
      version: column(orNull(wholeNumber(1, 999_999_999)), {
        meaning: "Version of the construction it keeps to when there are newer ones",
        unit: "count",
        example: "1",
        empty: "the newest",
      }),
      set: column(orNull(codeText()), { meaning: "Set it belongs to", example: "snow-skirts", empty: "none", refersTo: "sets" }),
      each: column(emptyMeans(oneOf(["performer", "place", "role"]), "performer"), {
        meaning: "One garment for each performer, for each place (shared across casts), or one for the role",
        example: "place",
        empty: "performer",
      }),
      parameters: column(record(someText(), codeText()), {
        meaning: "Parameters of the construction that differ from its own",
        example: "layers=12; hoop=single",
        empty: "all as in the construction",
      }),
      materials: column(record(codeText(), codeText()), {
        meaning: "Material for each material role of the construction that differs from its own",
        example: "net=net-white-54; basque=coutil-white",
        empty: "all as in the construction",
      }),
      due: column(codeText(), { meaning: "Milestone it must be finished for", example: "dress", refersTo: "milestones" }),
      weight: column(emptyMeans(wholeNumber(1, 100), 1), {
        meaning: "How much a day late matters; 1 is ordinary",
        unit: "count",
        example: "3",
        empty: "1",
      }),
      price: column(orNull(money(currency)), {
        meaning: "Price of one when bought or hired",
        unit: "money",
        example: "18.50",
        empty: "none, or not known",
      }),
      stock: column(orNull(codeText()), {
        meaning: "Number of the stock garment that is pulled or altered",
        example: "HM 014",
        empty: "none",
        refersTo: "stock",
      }),
    }),
});
