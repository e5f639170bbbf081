import { readGiven } from "#lib/breakdown/givenParameters";
import type { Construction } from "#lib/constructions/construction";
import type { Fault } from "#lib/exchange/fault";
import { meant } from "#lib/exchange/nearest";
import { faultIn, type Rule } from "./rule";

const FILE = "pieces.csv";

/** What is made has a construction; parameters and material roles are those of the construction; materials are known. */
export const pieceRules: Rule = ({ pieces, materials }, constructions) => {
  const known = materials.map(({ values }) => values.code ?? "");
  return pieces.flatMap(({ row, values }) => {
    const faults: Fault[] = [];
    const fault = (column: string, problem: string, mend: string) => faults.push(faultIn(FILE, row, column, problem, mend));
    if (values.source === "build" && values.construction === null)
      fault("construction", "Nothing says how it is made.", "Name a construction, or choose another source.");
    for (const material of Object.values(values.materials ?? {}))
      if (!known.includes(material))
        fault("materials", `"${material}" is not in materials.csv.`, meant(material, known, "Add a row for it there."));
    const construction = constructions.get(values.construction ?? "");
    if (!construction) return faults;
    const roles = construction.needs.map((need) => need.role);
    for (const role of Object.keys(values.materials ?? {}))
      if (!roles.includes(role))
        fault("materials", `${construction.code} has no material role "${role}".`, meant(role, roles, listed(roles)));
    for (const [code, text] of Object.entries(values.parameters ?? {})) {
      const problem = parameterProblem(construction, code, text);
      if (problem) fault("parameters", ...problem);
    }
    return faults;
  });
};

const listed = (words: readonly string[]): string => (words.length === 0 ? "Leave the cell empty." : `Use one of ${words.join(", ")}.`);

const parameterProblem = (construction: Construction, code: string, text: string): readonly [string, string] | null => {
  const parameter = construction.parameters.find((each) => each.code === code);
  const codes = construction.parameters.map((each) => each.code);
  if (!parameter) return [`${construction.code} has no parameter "${code}".`, meant(code, codes, listed(codes))];
  const read = readGiven(parameter, text);
  return read.ok
    ? null
    : [`${code}: ${read.error}`, `Write it like ${code}=${typeof parameter.value === "boolean" ? "yes" : parameter.value}.`];
};

/** The operation a set is free until must be one of the constructions its pieces are made by. */
export const setRules: Rule = ({ sets, pieces }, constructions) =>
  sets.flatMap(({ row, values: { code, freeUntil } }) => {
    if (!freeUntil) return [];
    const made = pieces
      .filter(({ values }) => values.set === code)
      .flatMap(({ values }) => constructions.get(values.construction ?? "") ?? []);
    const operations = made.flatMap((construction) => construction.operations.map((operation) => operation.code));
    if (made.length === 0 || operations.includes(freeUntil)) return [];
    return [
      faultIn(
        "sets.csv",
        row,
        "free_until",
        `"${freeUntil}" is no operation of its pieces.`,
        meant(freeUntil, operations, listed([...new Set(operations)])),
      ),
    ];
  });
