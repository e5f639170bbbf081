import type { Operation, Wait } from "#lib/constructions/construction";
import { firstNeeding } from "./dyedFirst";
import { workFigures } from "./figures";
import { FormulaReader } from "./formulaReader";
import { operationTime } from "./operationTime";
import type { MakingRequest } from "./request";
import { waitsLeft } from "./waitsLeft";
import type { DriverValue, GarmentWork, WorkNote, WorkOperation } from "./work";
import { workFittings } from "./workFittings";
import { workNeed } from "./workNeeds";

/**
 * One garment broken down: figures, operations, fittings, needs. What is done for a garment that is pulled, altered, hired or bought is
 * what its construction names for that source, no more. Nothing is guessed silently: each fallback is a note.
 */
export const breakDownOne = (request: MakingRequest, formulas: FormulaReader = new FormulaReader()): GarmentWork => {
  const { construction, garment, source } = request;
  const figures = workFigures(request, formulas);
  const notes: WorkNote[] = [...figures.notes];
  const tell = (kind: WorkNote["kind"], text: string) => void notes.push({ garment, kind, text });
  const isKept = (thing: { readonly when: string; readonly sources: readonly string[]; readonly code: string }): boolean => {
    if (!thing.sources.includes(source)) return false;
    if (thing.when === "") return true;
    const worked = formulas.work(thing.when, figures.values);
    if (!worked.ok) tell("parameter", `${thing.code}: ${worked.error.problem} ${worked.error.mend} It is kept.`);
    return !worked.ok || worked.value === true;
  };
  const operations = construction.operations.filter(isKept);
  const ownFittings = request.wearers === 0 ? [] : construction.fittings.filter(isKept);
  const kept = new Set([...operations, ...ownFittings].map(({ code }) => code));
  const waits = waitsLeft([...construction.operations, ...construction.fittings], kept);
  const needs = construction.needs
    .filter((rule) => isKept({ ...rule, code: rule.role }))
    .flatMap((rule) => {
      const need = workNeed(rule, request, figures, formulas, tell);
      return need ? [{ ...need, operation: firstNeeding(rule, operations, waits) }] : [];
    });
  if (operations.length === 0) tell("caution", `${construction.name[request.reader.words]} states no work for a garment to ${source}.`);
  if (source === "hire") tell("caution", "A hired piece goes back exactly as it came: reversible alterations only.");
  return {
    garment,
    construction: { code: construction.code, version: construction.version },
    drivers: figures.drivers,
    operations: operations.map((operation) => workOperation(operation, figures.drivers, waits.get(operation.code) ?? [], request)),
    fittings: workFittings(ownFittings, waits, request.wearers),
    needs,
    layers: figures.layers,
    notes,
  };
};

const workOperation = (
  operation: Operation,
  drivers: readonly DriverValue[],
  waitsFor: readonly Wait[],
  request: MakingRequest,
): WorkOperation => {
  const { code, name, part, skill, machine, batch, pauses, straining } = operation;
  return { code, name, part, skill, machine, ...operationTime(operation, drivers, request), waitsFor, batch, pauses, straining };
};
