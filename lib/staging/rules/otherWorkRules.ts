import type { Fault } from "#lib/exchange/fault";
import { listed, operationsOfSets } from "./pieceRules";
import { faultIn, type Rule } from "./rule";

const FILE = "other_work.csv";

/** About one thing, times and days in order, and what only a sample or a note may say. */
export const otherWorkRules: Rule = ({ otherWork }) =>
  otherWork.flatMap(({ row, values }) => {
    const { origin, garment, set, material, gates, low, likely, high, due, shownFor, askedOn, doneOn } = values;
    const faults: Fault[] = [];
    const fault = (column: string, problem: string, mend: string) => faults.push(faultIn(FILE, row, column, problem, mend));
    if ([garment, set, material].filter(Boolean).length > 1)
      fault(garment ? "garment" : "set", "It is about more than one thing.", "Keep one of garment, set and material; a row for each.");
    if (likely !== undefined && ((low ?? 0) > likely || (high ?? likely) < likely))
      fault("likely", "Low, likely and high are not in order.", "Write the least time as low and the most as high.");
    if (gates && origin === "sample") fault("gates", "A sample holds nothing up by itself.", "Let an approval do so in approvals.csv.");
    else if (gates && garment === null && set === null)
      fault("gates", "It is an operation of no garment.", "Name the garment or the set, or leave the cell empty.");
    if (shownFor && origin !== undefined && origin !== "sample")
      fault("shown_for", "Only a sample is shown for an approval.", "Make it a sample, or leave the cell empty.");
    if (origin === "parade note" && due === null)
      fault("due", "Nothing says by when the note must be done.", "Name a milestone, for example the dress rehearsal.");
    if (askedOn && doneOn && doneOn < askedOn) fault("done_on", "It is done before it is asked for.", "Exchange the days.");
    return faults;
  });

/** What it waits for is an approval or a set with a prototype, and what waits for it an operation. */
export const waitingRules: Rule = ({ otherWork, approvals, sets, pieces }, constructions, suggest) => {
  const prototypes = sets.filter(({ values }) => values.prototype);
  const known = [...approvals, ...prototypes].flatMap(({ values }) => values.code ?? []);
  const made = operationsOfSets(pieces, constructions);
  return otherWork.flatMap(({ row, values: { waitsFor, set, gates } }) => {
    const faults: Fault[] = [];
    if (waitsFor && !known.includes(waitsFor)) {
      const problem = `"${waitsFor}" is no approval of approvals.csv, nor a set of sets.csv with a prototype.`;
      faults.push(faultIn(FILE, row, "waits_for", problem, suggest(waitsFor, known, "Add a row for it to approvals.csv.")));
    }
    const operations = [...(made.get(set ?? "") ?? [])];
    if (gates && operations.length > 0 && !operations.includes(gates))
      faults.push(faultIn(FILE, row, "gates", `"${gates}" is no operation of its pieces.`, suggest(gates, operations, listed(operations))));
    return faults;
  });
};
