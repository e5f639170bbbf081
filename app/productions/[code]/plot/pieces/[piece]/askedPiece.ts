import type { Piece } from "#lib/casting/wardrobe";
import { versionMeant } from "#lib/constructions/versions";
import type { Staging } from "#lib/staging/staging";

/** Prefix of the fields that hold parameters. */
export const PARAMETER = "p.";

type Given = Readonly<Record<string, unknown>>;

const text = (given: Given, name: string): string | undefined => {
  const value = [given[name]].flat().at(-1);
  return typeof value === "string" ? value.trim().slice(0, 200) : undefined;
};

/**
 * The piece as a form or an address asks for it: its construction, and of the parameters those that differ from the construction's own. What
 * is not asked for stays. Another construction takes over the parameters it knows too.
 */
export const askedPiece = (staging: Staging, piece: Piece, given: Given): Piece => {
  const code = text(given, "construction");
  const known = code === undefined || code === "" || staging.constructions.some((one) => one.code === code);
  const construction = code === undefined || !known ? piece.construction : code === "" ? null : code;
  const version = construction === piece.construction ? piece.version : null;
  const meant = construction === null ? undefined : versionMeant(staging.constructions, construction, version);
  const parameters = (meant?.parameters ?? []).flatMap((parameter): readonly (readonly [string, string])[] => {
    const asked = text(given, PARAMETER + parameter.code) ?? piece.parameters[parameter.code] ?? "";
    return asked === "" || asked.toLowerCase() === ownValue(parameter.value).toLowerCase() ? [] : [[parameter.code, asked]];
  });
  const materials = Object.fromEntries(Object.entries(piece.materials).filter(([role]) => meant?.needs.some((need) => need.role === role)));
  return { ...piece, construction, version, parameters: Object.fromEntries(parameters), materials };
};

/** The construction's own value as a person writes it. */
export const ownValue = (value: string | number | boolean): string => (typeof value === "boolean" ? (value ? "yes" : "no") : String(value));
