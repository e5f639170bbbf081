import type { Construction } from "#lib/constructions/construction";
import { versionFile } from "#lib/constructions/versions";
import type { Change } from "./change";

/** Constructions by code and version; of one that changed, or was replaced by another version, each part that differs. */
export const compareConstructions = (before: readonly Construction[], after: readonly Construction[]): readonly Change[] => {
  const whole = (kind: "added" | "removed", construction: Construction, among: readonly Construction[]): Change => {
    const { code, version } = construction;
    const others = among.some((one) => one.code === code && one.version !== version);
    return {
      file: versionFile(among, construction),
      kind,
      name: code,
      field: null,
      from: kind === "removed" ? `version ${version}` : null,
      to: kind === "added" ? `version ${version}` : null,
      text: others ? `Version ${version} of ${code} is ${kind}.` : `${code} is ${kind}.`,
    };
  };
  const replaced = new Map<Construction, Construction>();
  for (const construction of after) {
    const was = before.find((one) => same(one, construction)) ?? before.find((one) => isReplacedBy(one, construction, before, after));
    if (was) replaced.set(construction, was);
  }
  const kept = new Set(replaced.values());
  return [
    ...after.flatMap((construction) => {
      const was = replaced.get(construction);
      return was ? differences(was, construction, versionFile(after, construction)) : [whole("added", construction, after)];
    }),
    ...before.filter((construction) => !kept.has(construction)).map((construction) => whole("removed", construction, before)),
  ];
};

const same = (one: Construction, other: Construction) => one.code === other.code && one.version === other.version;

/** The only version of its code before, and the only one after. */
const isReplacedBy = (was: Construction, is: Construction, before: readonly Construction[], after: readonly Construction[]) =>
  was.code === is.code && [before, after].every((all) => all.filter(({ code }) => code === is.code).length === 1);

const differences = (was: Construction, is: Construction, file: string): readonly Change[] =>
  (Object.keys(is) as (keyof Construction)[]).flatMap((field): readonly Change[] => {
    if (JSON.stringify(was[field]) === JSON.stringify(is[field])) return [];
    const [from, to] = [said(was[field]), said(is[field])];
    const text = from === to ? `${is.code}: ${field} differ.` : `${is.code}: ${field} was ${from}, becomes ${to}.`;
    return [{ file, kind: "changed", name: is.code, field, from, to, text }];
  });

const said = (value: Construction[keyof Construction]): string => {
  if (Array.isArray(value)) return `${value.length} of them`;
  return typeof value === "object" && "uk" in value ? String(value.uk) : typeof value === "object" ? JSON.stringify(value) : String(value);
};
