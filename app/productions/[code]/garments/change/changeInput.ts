import { type Piece, SOURCES } from "#lib/casting/wardrobe";
import type { Staging } from "#lib/staging/staging";
import { readMoney } from "#lib/units/money";
import type { PieceChange } from "#lib/whatif/changePieces";
import { SHARED } from "../garmentRows";

/** Name of a parameter's field in the form and in the address. */
export const PARAMETER = "p.";
/** Typed for a parameter: as in the construction. */
export const OWN = "own";
/** Chosen for what a piece may also not have. */
export const NONE = "-";

export interface ReadChange {
  readonly change: PieceChange;
  /** What could not be read, by field. */
  readonly faults: Readonly<Record<string, string>>;
}

type Given = Readonly<Record<string, string | readonly string[] | undefined>>;

/** Reads a change of pieces from a form or an address. An empty field leaves things as they are. */
export const readChange = (given: Given, staging: Pick<Staging, "constructions" | "milestones" | "stock" | "production">): ReadChange => {
  const faults: Record<string, string> = {};
  const said = (name: string): string => {
    const value = given[name];
    return (typeof value === "string" ? value : (value?.at(-1) ?? "")).trim().slice(0, 100);
  };
  const wrong = (name: string, fault: string): undefined => {
    faults[name] = fault;
    return undefined;
  };
  const listed = <T extends string>(name: string, all: readonly T[], fault: string): T | undefined => {
    const found = all.find((one) => one === said(name));
    return said(name) === "" ? undefined : (found ?? wrong(name, fault));
  };
  const weight = said("weight");
  const price = said("price") === "" || said("price") === NONE ? null : readMoney(said("price"), staging.production.currency);
  const stock = listed("stock", [NONE, ...staging.stock.map(({ number }) => number)], "There is no such garment in stock.");
  const read = {
    source: listed("source", SOURCES, "There is no such source."),
    made: readMade(said("made"), staging) ?? (said("made") === "" ? undefined : wrong("made", "There is no such construction.")),
    each: listed("each", Object.keys(SHARED) as Piece["each"][], "There is no such choice."),
    due: listed(
      "due",
      staging.milestones.map(({ code }) => code),
      "There is no such milestone.",
    ),
    weight: weight === "" ? undefined : /^([1-9]\d?|100)$/.test(weight) ? Number(weight) : wrong("weight", "A whole number, 1 to 100."),
    price: price?.ok ? price.value : price ? wrong("price", price.error.mend) : said("price") === NONE ? null : undefined,
    stock: stock === NONE ? null : stock,
    parameters: readParameters(given),
  };
  return { change: Object.fromEntries(Object.entries(read).filter(([, value]) => value !== undefined)), faults };
};

/** `tunic`, `tunic@2` for a version it keeps to, `-` for nothing. */
const readMade = (text: string, { constructions }: Pick<Staging, "constructions">): PieceChange["made"] => {
  if (text === NONE) return { construction: null, version: null };
  const [code, version] = text.split("@");
  const found = constructions.find((one) => one.code === code && (version === undefined || String(one.version) === version));
  return found && { construction: found.code, version: version === undefined ? null : found.version };
};

const readParameters = (given: Given): PieceChange["parameters"] => {
  const told = Object.entries(given).flatMap(([name, value]) => {
    const text = (typeof value === "string" ? value : (value?.at(-1) ?? "")).trim().slice(0, 100);
    return name.startsWith(PARAMETER) && text !== "" ? [[name.slice(PARAMETER.length), text === OWN ? null : text] as const] : [];
  });
  return told.length === 0 ? undefined : Object.fromEntries(told);
};
