import type { Piece } from "#lib/casting/wardrobe";
import type { Construction, Parameter } from "#lib/constructions/construction";
import type { Usage } from "#lib/words/words";
import { ownValue, PARAMETER } from "./askedPiece";
import type { ParameterField } from "./ParameterInput";

/** The parameters of a construction with what the piece says of them. */
export const parameterFields = (construction: Construction | undefined, piece: Piece, usage: Usage): readonly ParameterField[] =>
  (construction?.parameters ?? []).map((parameter): ParameterField => {
    const own = ownValue(parameter.value);
    return {
      code: parameter.code,
      field: PARAMETER + parameter.code,
      label: parameter.label[usage],
      value: piece.parameters[parameter.code] ?? own,
      own,
      limits: "min" in parameter ? `${parameter.min} to ${parameter.max}` : "",
      kind: parameter.kind === "count" || parameter.kind === "ratio" ? "number" : "text",
      options: optionsOf(parameter, usage),
    };
  });

const optionsOf = (parameter: Parameter, usage: Usage): ParameterField["options"] => {
  if (parameter.kind === "choice") return parameter.options.map(({ code, label }) => ({ value: code, name: label[usage] }));
  return parameter.kind === "yes-no" ? ["yes", "no"].map((word) => ({ value: word, name: word })) : [];
};
