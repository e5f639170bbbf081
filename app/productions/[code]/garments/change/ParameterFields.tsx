import type { Piece } from "#lib/casting/wardrobe";
import type { Construction, Parameter } from "#lib/constructions/construction";
import { versionMeant } from "#lib/constructions/versions";
import type { Staging } from "#lib/staging/staging";
import styles from "./Change.module.css";
import { Choice, Typed } from "./Choice";
import { OWN, PARAMETER } from "./changeInput";
import { agreed } from "./PieceFields";

/** The constructions of some pieces, each once. */
export const constructionsOf = (pieces: readonly Piece[], { constructions }: Staging): readonly Construction[] => [
  ...new Set(
    pieces.flatMap(({ construction, version }) =>
      construction === null ? [] : (versionMeant(constructions, construction, version) ?? []),
    ),
  ),
];

const writtenOf = (parameter: Parameter): string =>
  parameter.kind === "yes-no" ? (parameter.value ? "yes" : "no") : String(parameter.value);

/** What it says in the piece, or in the construction when the piece says nothing. */
const nowOf = (piece: Piece, parameter: Parameter): string => piece.parameters[parameter.code] ?? writtenOf(parameter);

/** The parameters of the constructions the pieces have, or shall have, with their limits. */
export const ParameterFields = ({
  pieces,
  staging,
  said,
}: {
  /** Made as they shall be made, with the parameters they have. */
  readonly pieces: readonly Piece[];
  readonly staging: Staging;
  readonly said: (name: string) => string;
}) =>
  constructionsOf(pieces, staging).map((construction) => {
    const own = pieces.filter((piece) => constructionsOf([piece], staging)[0] === construction);
    if (construction.parameters.length === 0) return null;
    return (
      <fieldset key={`${construction.code} ${construction.version}`} className={styles.fields}>
        <legend>
          <h3>{construction.name[staging.production.words]}</h3>
        </legend>
        {construction.parameters.map((parameter) => (
          <ParameterField
            key={parameter.code}
            parameter={parameter}
            now={agreed(own.map((piece) => nowOf(piece, parameter)))}
            words={staging.production.words}
            said={said(PARAMETER + parameter.code)}
          />
        ))}
      </fieldset>
    );
  });

const ParameterField = ({
  parameter,
  now,
  words,
  said,
}: {
  readonly parameter: Parameter;
  readonly now: string | null;
  readonly words: "uk" | "us";
  readonly said: string;
}) => {
  const shared = { name: PARAMETER + parameter.code, label: parameter.label[words], now };
  const own = { value: OWN, label: `as in the construction: ${writtenOf(parameter)}` };
  switch (parameter.kind) {
    case "yes-no":
      return <Choice {...shared} chosen={said} options={[{ value: "yes", label: "yes" }, { value: "no", label: "no" }, own]} />;
    case "choice":
      return (
        <Choice
          {...shared}
          chosen={said}
          options={[...parameter.options.map(({ code, label }) => ({ value: code, label: label[words] })), own]}
        />
      );
    default:
      return <Typed {...shared} typed={said} hint={`${parameter.min} to ${parameter.max}; ${OWN}: ${writtenOf(parameter)}`} />;
  }
};
