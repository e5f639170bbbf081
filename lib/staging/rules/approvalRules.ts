import type { Fault } from "#lib/exchange/fault";
import { listed, operationsOfSets } from "./pieceRules";
import { faultIn, type Rule } from "./rule";

const FILE = "approvals.csv";

/** Codes apart from those of prototypes, an operation only with its set, days in order, and nothing handed over before its samples are made. */
export const approvalRules: Rule = ({ approvals, sets, pieces, otherWork }, constructions, suggest) => {
  const prototypes = new Set(sets.filter(({ values }) => values.prototype).map(({ values }) => values.code));
  const made = operationsOfSets(pieces, constructions);
  const unmade = new Map(otherWork.filter(({ values }) => values.doneOn === null).map(({ values }) => [values.shownFor, values.code]));
  return approvals.flatMap(({ row, values: { code, set, freeUntil, askedOn, expectedOn, approvedOn } }) => {
    const faults: Fault[] = [];
    const fault = (column: string, problem: string, mend: string) => faults.push(faultIn(FILE, row, column, problem, mend));
    if (prototypes.has(code)) fault("code", `"${code}" is the approval of a prototype in sets.csv.`, "Give it another code.");
    if (freeUntil && set === null) fault("free_until", "It is an operation of no set.", "Name the set, or leave the cell empty.");
    const operations = [...(made.get(set ?? "") ?? [])];
    if (freeUntil && operations.length > 0 && !operations.includes(freeUntil))
      fault("free_until", `"${freeUntil}" is no operation of its pieces.`, suggest(freeUntil, operations, listed(operations)));
    if (askedOn && expectedOn && expectedOn < askedOn) fault("expected_on", "It is promised before it is asked for.", "Exchange the days.");
    if (askedOn && approvedOn && approvedOn < askedOn) fault("approved_on", "It is approved before it is asked for.", "Exchange the days.");
    const sample = unmade.get(code);
    if (askedOn && !approvedOn && code !== undefined && sample !== undefined)
      fault("asked_on", `The sample ${sample} is not made yet.`, "Write the day it was done in other_work.csv, or leave this cell empty.");
    return faults;
  });
};
