import { readGiven } from "#lib/breakdown/givenParameters";
import type { Construction } from "#lib/constructions/construction";
import { versionMeant, versionsOf } from "#lib/constructions/versions";
import type { Fault } from "#lib/exchange/fault";
import type { Suggest } from "#lib/exchange/nearest";
import type { Tables } from "../tables";
import { faultIn, type Rule } from "./rule";

const FILE = "pieces.csv";

/** What is made has a construction; parameters and material roles are those of the construction; materials are known. */
export const pieceRules: Rule = ({ pieces, materials }, constructions, suggest) => {
  const known = new Set(materials.map(({ values }) => values.code ?? ""));
  return pieces.flatMap(({ row, values }) => {
    const faults: Fault[] = [];
    const fault = (column: string, problem: string, mend: string) => faults.push(faultIn(FILE, row, column, problem, mend));
    if (values.source === "build" && values.construction === null)
      fault("construction", "Nothing says how it is made.", "Name a construction, or choose another source.");
    if (values.construction === null && typeof values.version === "number")
      fault("version", "It is a version of nothing.", "Name a construction, or leave the cell empty.");
    for (const material of Object.values(values.materials ?? {}))
      if (!known.has(material))
        fault("materials", `"${material}" is not in materials.csv.`, suggest(material, known, "Add a row for it there."));
    const construction = versionMeant(constructions, values.construction ?? "", values.version ?? null);
    if (!construction) {
      const versions = versionsOf(constructions, values.construction ?? "").map(({ version }) => String(version));
      if (versions.length > 0) fault("version", `${values.construction} has no version ${values.version}.`, listed(versions));
      return faults;
    }
    const roles = construction.needs.map((need) => need.role);
    for (const role of Object.keys(values.materials ?? {}))
      if (!roles.includes(role))
        fault("materials", `${construction.code} has no material role "${role}".`, suggest(role, roles, listed(roles)));
    for (const [code, text] of Object.entries(values.parameters ?? {})) {
      const problem = parameterProblem(construction, code, text, suggest);
      if (problem) fault("parameters", ...problem);
    }
    return faults;
  });
};

export const listed = (words: readonly string[]): string =>
  words.length === 0 ? "Leave the cell empty." : `Use one of ${words.join(", ")}.`;

const parameterProblem = (construction: Construction, code: string, text: string, suggest: Suggest): readonly [string, string] | null => {
  const parameter = construction.parameters.find((each) => each.code === code);
  const codes = construction.parameters.map((each) => each.code);
  if (!parameter) return [`${construction.code} has no parameter "${code}".`, suggest(code, codes, listed(codes))];
  const read = readGiven(parameter, text);
  return read.ok
    ? null
    : [`${code}: ${read.error}`, `Write it like ${code}=${typeof parameter.value === "boolean" ? "yes" : parameter.value}.`];
};

/** Codes of the operations of the constructions that the pieces of each set are made by. */
export const operationsOfSets = (pieces: Tables["pieces"], constructions: readonly Construction[]): ReadonlyMap<string, Set<string>> => {
  const made = new Map<string, Set<string>>();
  for (const { values } of pieces) {
    const construction = versionMeant(constructions, values.construction ?? "", values.version ?? null);
    if (values.set && construction)
      made.set(values.set, new Set([...(made.get(values.set) ?? []), ...construction.operations.map(({ code }) => code)]));
  }
  return made;
};

/** The operation a set is free until must be one of the constructions its pieces are made by. */
export const setRules: Rule = ({ sets, pieces }, constructions, suggest) => {
  const made = operationsOfSets(pieces, constructions);
  return sets.flatMap(({ row, values: { code = "", freeUntil } }) => {
    if (!freeUntil) return [];
    const operations = [...(made.get(code) ?? [])];
    if (operations.length === 0 || operations.includes(freeUntil)) return [];
    const mend = suggest(freeUntil, operations, listed(operations));
    return [faultIn("sets.csv", row, "free_until", `"${freeUntil}" is no operation of its pieces.`, mend)];
  });
};
