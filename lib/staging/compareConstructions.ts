import type { Construction } from "#lib/constructions/construction";
import type { Change } from "./change";

/** Constructions by code; of one that changed, each part that differs. */
export const compareConstructions = (before: readonly Construction[], after: readonly Construction[]): readonly Change[] => {
  const old = new Map(before.map((construction) => [construction.code, construction]));
  const now = new Set(after.map((construction) => construction.code));
  const whole = (kind: "added" | "removed", { code, version }: Construction): Change => ({
    file: `constructions/${code}.json`,
    kind,
    name: code,
    field: null,
    from: kind === "removed" ? `version ${version}` : null,
    to: kind === "added" ? `version ${version}` : null,
    text: `${code} is ${kind}.`,
  });
  return [
    ...after.flatMap((construction) => {
      const was = old.get(construction.code);
      return was ? differences(was, construction) : [whole("added", construction)];
    }),
    ...before.filter(({ code }) => !now.has(code)).map((construction) => whole("removed", construction)),
  ];
};

const differences = (was: Construction, is: Construction): readonly Change[] =>
  (Object.keys(is) as (keyof Construction)[]).flatMap((field): readonly Change[] => {
    if (JSON.stringify(was[field]) === JSON.stringify(is[field])) return [];
    const [from, to] = [said(was[field]), said(is[field])];
    const text = from === to ? `${is.code}: ${field} differ.` : `${is.code}: ${field} was ${from}, becomes ${to}.`;
    return [{ file: `constructions/${is.code}.json`, kind: "changed", name: is.code, field, from, to, text }];
  });

const said = (value: Construction[keyof Construction]): string => {
  if (Array.isArray(value)) return `${value.length} of them`;
  return typeof value === "object" && "uk" in value ? String(value.uk) : typeof value === "object" ? JSON.stringify(value) : String(value);
};
