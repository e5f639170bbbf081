import { approvalRules } from "./rules/approvalRules";
import { castingRules, uncastPlaces } from "./rules/castingRules";
import { lotRules, offerRules, widthRule } from "./rules/materialRules";
import { measurementRules } from "./rules/measurementRules";
import { otherWorkRules, waitingRules } from "./rules/otherWorkRules";
import { pieceRules, setRules } from "./rules/pieceRules";
import { productionRule } from "./rules/productionRule";
import type { Rule } from "./rules/rule";
import { absenceRules, callRules, makerRules } from "./rules/timeRules";
import type { FileKey } from "./tables";

/** The rules, each with the files that must be known before it can be asked. */
export const RULES: readonly { readonly rule: Rule; readonly reads: readonly FileKey[] }[] = [
  { rule: productionRule, reads: ["production"] },
  { rule: measurementRules, reads: ["measurements"] },
  { rule: castingRules, reads: ["casting", "roles"] },
  { rule: uncastPlaces, reads: ["casting", "roles", "costumes"] },
  { rule: setRules, reads: ["sets", "pieces"] },
  { rule: pieceRules, reads: ["pieces", "materials"] },
  { rule: makerRules, reads: ["makers"] },
  { rule: absenceRules, reads: ["absences"] },
  { rule: widthRule, reads: ["materials"] },
  { rule: offerRules, reads: ["offers", "materials"] },
  { rule: lotRules, reads: ["lots", "materials"] },
  { rule: callRules, reads: ["calls"] },
  { rule: approvalRules, reads: ["approvals", "sets", "pieces", "otherWork"] },
  { rule: otherWorkRules, reads: ["otherWork"] },
  { rule: waitingRules, reads: ["otherWork", "approvals", "sets", "pieces"] },
];
