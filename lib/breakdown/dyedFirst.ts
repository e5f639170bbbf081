import type { NeedRule, Wait } from "#lib/constructions/construction";

type Step = { readonly code: string; readonly skill: string };

/** What takes colour in the vat before it is cut. */
const DYED_KINDS: ReadonlySet<string> = new Set(["net", "cloth", "lining", "stretch", "ribbon"]);

/**
 * The operation that first needs the goods: where cloth is dyed before it is cut, that is the dyeing, so that it is ordered in time for the
 * vat. Dyeing after making, which waits for other work, first needs nothing.
 */
export const firstNeeding = (
  { kind, operation }: Pick<NeedRule, "kind" | "operation">,
  operations: readonly Step[],
  waits: ReadonlyMap<string, readonly Pick<Wait, "on">[]>,
): string => {
  if (!DYED_KINDS.has(kind)) return operation;
  const byDyer = new Set(operations.filter(({ skill }) => skill === "dye").map(({ code }) => code));
  const before = (waits.get(operation) ?? []).find(
    ({ on }) => byDyer.has(on) && (waits.get(on) ?? []).every((wait) => byDyer.has(wait.on)),
  );
  return before?.on ?? operation;
};
