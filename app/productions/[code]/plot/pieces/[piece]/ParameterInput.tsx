/** A parameter of a construction as its form shows it. */
export interface ParameterField {
  readonly code: string;
  /** Name of its field. */
  readonly field: string;
  readonly label: string;
  /** What it is now. */
  readonly value: string;
  /** The construction's own. */
  readonly own: string;
  /** `7 to 16`; empty where there are no limits. */
  readonly limits: string;
  readonly kind: "text" | "number";
  readonly options: readonly { readonly value: string; readonly name: string }[];
}

/** One parameter: a choice, a number, or a length as a person writes it. */
export const ParameterInput = ({
  parameter: { code, field, label, value, own, limits, kind, options },
  kept,
  wrong,
}: {
  readonly parameter: ParameterField;
  readonly kept: string | undefined;
  readonly wrong: string | undefined;
}) => {
  const shared = {
    id: `parameter-${code}`,
    name: field,
    defaultValue: kept ?? value,
    "aria-invalid": wrong !== undefined,
    "aria-describedby": `parameter-${code}-note`,
  };
  const ownName = options.find((option) => option.value === own)?.name ?? own;
  return (
    <p className="field">
      <label htmlFor={shared.id}>{label}</label>
      {options.length > 0 ? (
        <select {...shared}>
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.name}
            </option>
          ))}
        </select>
      ) : (
        <input type="text" inputMode={kind === "number" ? "decimal" : "text"} autoComplete="off" {...shared} />
      )}
      <span id={`parameter-${code}-note`} className="units">
        usually {ownName}
        {limits && `, ${limits}`}
      </span>
      {wrong && <span className="bad">{wrong}</span>}
    </p>
  );
};
