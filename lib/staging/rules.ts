import { castingRules, uncastPlaces } from "./rules/castingRules";
import { lotRules, offerRules, widthRule } from "./rules/materialRules";
import { measurementRules } from "./rules/measurementRules";
import { pieceRules, setRules } from "./rules/pieceRules";
import { productionRule } from "./rules/productionRule";
import type { Rule } from "./rules/rule";
import { absenceRules, callRules, makerRules } from "./rules/timeRules";

export const RULES: readonly Rule[] = [
  productionRule,
  measurementRules,
  castingRules,
  uncastPlaces,
  setRules,
  pieceRules,
  makerRules,
  absenceRules,
  widthRule,
  offerRules,
  lotRules,
  callRules,
];
