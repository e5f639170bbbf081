import type { FittingKind } from "#lib/constructions/construction";

/** What a performer brings to a fitting of a kind (common practice, no source). Empty when nothing is asked for. */
export const COME_WITH: Readonly<Record<FittingKind, string>> = {
  measure: "skin tights, fitted top; measured cold and warm",
  toile: "undergarments as worn on stage",
  first: "shoes, undergarments",
  second: "shoes, undergarments, headpiece; partner for lifts",
  final: "shoes, everything worn on stage",
  cover: "shoes, undergarments; worked warm",
};

/** What is always tried before a garment is let go (common practice, no source). */
export const MOVEMENTS: readonly string[] = ["arms high", "arabesque", "back bend", "lift", "floor", "sit and breathe"];
