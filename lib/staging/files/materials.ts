import * as z from "zod";
import { GRAINS, MATERIAL_KINDS } from "#lib/materials/material";
import { emptyMeans, orNull } from "../cells/cell";
import { length, share } from "../cells/numbers";
import { anyText, codeText, oneOf, someText } from "../cells/words";
import { column } from "../column";
import { stagingFile } from "../stagingFile";

export const materials = stagingFile({
  name: "materials.csv",
  about: "What garments are made of.",
  key: ["code"],
  schema: ({ lengths }) =>
    z.object({
      code: column(codeText(), { meaning: "Short name, used by pieces, constructions, offers and lots", example: "net-white-54" }),
      name: column(someText(), { meaning: "Name on lists", example: "Stiff net, white" }),
      kind: column(oneOf(MATERIAL_KINDS), { meaning: MATERIAL_KINDS.join(", "), example: "net" }),
      measure: column(oneOf(["length", "count"]), { meaning: "Sold and counted by length, or by the piece (count)", example: "length" }),
      colour: column(anyText(), { meaning: "Colour", example: "white", empty: "not said" }),
      width: column(orNull(length(lengths)), {
        meaning: "Full width of the roll",
        unit: "length",
        example: "54 in",
        empty: "it has no width",
      }),
      cuttable: column(orNull(length(lengths)), {
        meaning: "Width less selvedges",
        unit: "length",
        example: "53 in",
        empty: "the full width",
      }),
      shrinkage: column(emptyMeans(share(500), 0), {
        meaning: "Lost when washed before cutting; cotton bobbinet up to 30%",
        unit: "per cent",
        example: "3%",
        empty: "0%",
      }),
      spare: column(emptyMeans(share(2000), 0), {
        meaning: "Bought beyond the need, for waste and repair",
        unit: "per cent",
        example: "10%",
        empty: "0%",
      }),
      kerf: column(emptyMeans(length(lengths), 0), {
        meaning: "Lost at each cut through a rod, a coil or a strip",
        unit: "length",
        example: "2 mm",
        empty: "nothing",
      }),
      keep: column(orNull(length(lengths)), {
        meaning: "Shortest rest worth keeping for another job",
        unit: "length",
        example: "18 in",
        empty: "no rest is kept",
      }),
      grain: column(emptyMeans(oneOf(GRAINS), "fixed"), {
        meaning: "Whether pieces may lie a quarter turn round: fixed or free",
        example: "fixed",
        empty: "fixed",
      }),
    }),
});
