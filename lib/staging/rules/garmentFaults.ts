import { approvalTitle } from "#lib/approvals/approvalTitle";
import { circleOf } from "#lib/approvals/circle";
import { garmentsOf } from "#lib/casting/garments";
import { versionMeant } from "#lib/constructions/versions";
import type { Fault } from "#lib/exchange/fault";
import type { Suggest } from "#lib/exchange/nearest";
import type { Staging } from "../staging";
import type { Tables } from "../tables";
import { listed } from "./pieceRules";
import { faultIn } from "./rule";

const FILE = "other_work.csv";

/** Other work is about a garment of the production, gates an operation of it, and no approval waits for itself. */
export const garmentFaults = (staging: Staging, tables: Tables, suggest: Suggest): readonly Fault[] => {
  if (staging.otherWork.length + staging.approvals.length === 0) return [];
  const garments = garmentsOf(staging);
  const byNumber = new Map(garments.map((garment) => [garment.number, garment]));
  const faults = staging.otherWork.flatMap(({ garment: number, gates }, at): Fault[] => {
    const row = tables.otherWork[at]!.row;
    if (number === null) return [];
    const garment = byNumber.get(number);
    if (!garment) {
      const mend = suggest(number, byNumber.keys(), "Write a number as the plan lists it.");
      return [faultIn(FILE, row, "garment", `No garment of the production has the number "${number}".`, mend)];
    }
    const construction = versionMeant(staging.constructions, garment.construction ?? "", garment.version);
    const operations = construction?.operations.map(({ code }) => code) ?? [];
    if (gates === null || operations.includes(gates)) return [];
    return [faultIn(FILE, row, "gates", `"${gates}" is no operation of ${number}.`, suggest(gates, operations, listed(operations)))];
  });
  const circle = circleOf(staging, garments);
  if (circle === null) return faults;
  const problem = `Approvals wait for each other in a circle: ${circle.map((code) => approvalTitle(staging, code)).join(", ")}.`;
  return [...faults, faultIn(FILE, null, "waits_for", problem, "Let one of them, or its sample, wait for less.")];
};
